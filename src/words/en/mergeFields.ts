import { and, clock, duration, effort, number, plural, setting, signedSetting } from '#words/forms.ts'
import { measures } from './measures.ts'

/** What can differ between two copies of a ride: the name of every field, and how its value is said. */

const FIELDS = {
  'ride title': 'title',
  'ride language': 'language of the cues',
  'ride aim': 'goal',
  'ride level': 'level',
  'ride slotMinutes': 'class length',
  'ride startsAt': 'start',
  'ride briefingSeconds': 'welcome',
  'ride clearUpSeconds': 'wipe-down',
  'ride datum': 'resistance counts from',
  'ride bike': 'bike',
  'ride room': 'kind of room',
  'ride location': 'room',
  'ride leaders': 'instructors',
  'ride leader.name': 'instructor',
  'ride leader.wordsPerMinute': 'words per minute',
  'ride avoidMoves': 'moves to avoid',
  'ride standIn.room': 'for a sub: the room',
  'ride standIn.regulars': 'for a sub: what regulars expect',
  'ride standIn.mustDo': 'for a sub: what has to be done',
  'ride standIn.mustNot': 'for a sub: what must not be done',
  'ride privateNotes': 'private notes',

  'section title': 'name',
  'section leadInSeconds': 'lead-in',
  'section lead': 'first foot',
  'section ridden': 'part that plays',
  'section song': 'song',
  'section song.title': 'song',
  'section song.artist': 'artist',
  'section song.grid': 'tempo',
  'section song.lengthSeconds': 'song length',
  'section song.strikesPerBeat': 'pedal strokes per beat',
  'section song.marks': 'markers in the song',
  'section song.quiet': 'no-talk zones',
  'section song.clean': 'clean lyrics',
  'section song.fingerprint': 'music file',
  'section notes': 'notes',

  'set label': 'name',
  'set rounds': 'rounds',
  'set perRound': 'added each round',

  'block label': 'name',
  'block terrain': 'kind of block',
  'block length': 'length',
  'block posture': 'posture',
  'block hands': 'hands',
  'block resistance': 'resistance',
  'block ownTotal': 'instructor’s own resistance',
  'block cadence': 'cadence',
  'block strikesPerBeat': 'pedal strokes per beat',
  'block effort': 'effort',
  'block lead': 'lead foot',
  'block move': 'move',
  'block allOut': 'all out',
  'block water': 'water',
  'block walk': 'walking the room',
  'block easier': 'easier option',
  'block harder': 'harder option',
  'block feel': 'how it feels',
  'block leader': 'instructor',
  'block mic': 'on the mic',
  'block locked': 'locked',
  'block eights': 'fewest and most eights',
  'block notes': 'notes',

  'cue moment': 'moment',
  'cue lead': 'said ahead by',
  'cue text': 'words',
  'cue count': 'count-in',
}

const DATUMS = { base: 'base', loose: 'the loose wheel' }

const ROOMS = { studio: 'studio', online: 'online' }

const MOMENTS = { preview: 'preview', announce: 'announce', countIn: 'count-in', action: 'action', form: 'form cue', story: 'story' }

const LEAD_FEET = { keep: 'same foot', swap: 'other foot', left: 'left', right: 'right' }

const CALIBRATIONS = { watts: 'calibrated by watts', feel: 'calibrated by feel' }

interface Range {
  from: number
  to: number
  orMore?: boolean | undefined
}

type Call =
  | { kind: 'keep' | 'allOff' }
  | { kind: 'change'; mode: 'exact' | 'atLeast' | 'ifYouHaveIt'; steps: number }
  | ({ kind: 'total' | 'byFeel' } & Range)

const callAlone = (call: Call, perUnit: number): string => {
  switch (call.kind) {
    case 'keep':
      return 'stay'
    case 'allOff':
      return 'all off'
    case 'total':
      return `to ${measures.settingRange(call, perUnit)}`
    case 'byFeel':
      return `to ${measures.settingRange(call, perUnit)} by feel`
    case 'change': {
      const change = call.steps === 0 ? 'stay' : signedSetting(call.steps, perUnit)
      return call.mode === 'exact' ? change : `${change} ${call.mode === 'atLeast' ? 'or more' : 'if you have it'}`
    }
  }
}

export const mergeFields = {
  field: ({ field }: { field: keyof typeof FIELDS }) => FIELDS[field],
  rule: ({ name }: { name: string }) => `studio rule “${name}”`,
  rider: 'rider',

  none: 'none',
  /** A value that has no short form. */
  changed: 'changed',
  yes: ({ yes }: { yes: boolean }): string => (yes ? 'yes' : 'no'),
  minutes: ({ minutes }: { minutes: number }) => `${number(minutes)} min`,
  datum: ({ datum }: { datum: keyof typeof DATUMS }) => DATUMS[datum],
  room: ({ room }: { room: keyof typeof ROOMS }) => ROOMS[room],
  /** A bike by its name, with what tells two states of it apart. */
  bike: ({ name, calibration, fitted }: { name: string; calibration?: keyof typeof CALIBRATIONS | undefined; fitted: boolean }) => {
    const known = [...(calibration ? [CALIBRATIONS[calibration]] : []), ...(fitted ? ['brake fitted'] : [])]
    return known.length === 0 ? name : `${name} (${known.join(', ')})`
  },
  ruleValue: ({ value, unit }: { value: number; unit: string }) => `${number(value, 3)}${unit === '' ? '' : ` ${unit}`}`,

  /** The part of a song that plays, in counts. */
  ridden: ({ from, to }: { from: number; to?: number | undefined }) =>
    to === undefined ? `from count ${number(from)}` : `counts ${number(from)} to ${number(to)}`,
  noSong: 'no song',
  /** Two recordings of one title are told apart. */
  song: ({ title, seconds, bpm }: { title: string; seconds: number; bpm?: number | undefined }) =>
    [title, clock(seconds), ...(bpm === undefined ? [] : [measures.bpm(bpm, 2)])].join(', '),
  grid: ({ bpm, beats, firstBeat, odd }: { bpm: number; beats: number; firstBeat: number; odd: readonly string[] }) =>
    [measures.bpm(bpm, 2), `${number(beats)} beats per bar`, `first beat at ${number(firstBeat, 3)} s`, ...odd].join(', '),
  /** Places in a song by its eights or sixes. */
  places: ({ places, more, unit }: { places: readonly string[]; more: number; unit: number }) =>
    `at the ${unit === 6 ? 'sixes' : 'eights'} ${places.join(', ')}${more > 0 ? ` and ${number(more)} more` : ''}`,
  fingerprint: ({ print }: { print: string }) => `heard in the file ${print}`,
  strikes: ({ strikes }: { strikes: 0.5 | 1 | 2 | null }): string => {
    if (strikes === null) return 'off the beat'
    if (strikes === 0.5) return '½, half time'
    return strikes === 1 ? '1, on the beat' : '2, double time'
  },

  rounds: ({ rounds }: { rounds: number }) => plural(rounds, 'round', 'rounds'),
  perRound: ({ steps, perUnit }: { steps: number; perUnit: number }) => `${signedSetting(steps, perUnit)} per round`,
  resistance: ({
    call,
    aim,
    checkpoint,
    perUnit,
  }: {
    call: Call
    aim?: number | undefined
    checkpoint?: Range | undefined
    perUnit: number
  }) =>
    [
      callAlone(call, perUnit),
      ...(aim === undefined ? [] : [`target ${setting(aim, perUnit)}`]),
      ...(checkpoint ? [`be at ${measures.settingRange(checkpoint, perUnit)}`] : []),
    ].join(', '),
  legsStill: 'legs still',
  cadence: ({ from, to }: { from: number; to: number }) =>
    from === to ? measures.rpm(from, 2) : `${number(from)} to ${measures.rpm(to, 2)}`,
  effort: ({ from, to }: { from: number; to: number }) => (from === to ? effort(from) : `${effort(from)} to ${effort(to)}`),
  leadFoot: ({ lead }: { lead: keyof typeof LEAD_FEET }) => LEAD_FEET[lead],
  move: ({ name, counts, side, alternates }: { name: string; counts: number; side?: 'left' | 'right' | undefined; alternates: boolean }) =>
    `${name} on ${number(counts)}${side === undefined ? '' : `, ${LEAD_FEET[side]}${alternates ? ' first' : ''}`}`,
  eights: ({ least, most }: { least?: number | undefined; most?: number | undefined }) =>
    and([...(least === undefined ? [] : [`at least ${number(least)}`]), ...(most === undefined ? [] : [`at most ${number(most)}`])]),

  moment: ({ moment }: { moment: keyof typeof MOMENTS }) => MOMENTS[moment],
  counts: ({ counts }: { counts: number }) => plural(counts, 'count', 'counts'),
  seconds: ({ seconds }: { seconds: number }) => duration(seconds),
  countIn: ({ count }: { count: number }) => `count-in of ${number(count)}`,
}
