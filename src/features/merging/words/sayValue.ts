import { CONSTANTS } from '#engine/constants.ts'
import { formatChange } from '#engine/ledger/sayCall.ts'
import type { Scale } from '#engine/speech/speech.ts'
import { checkpointOf } from '#plan/ledger/applyCall.ts'
import type { Posture } from '#plan/model.ts'
import {
  type BeatGrid,
  type Bike,
  type Cadence,
  type Leader,
  type Length,
  type Move,
  type Resistance,
  type Ride,
  type Song,
  tempoOf,
} from '#plan/model.ts'
import { joinWords } from '#plan/names.ts'
import { POSTURE_WORDS } from '#plan/posture.ts'
import type { Rider } from '#plan/riderModel.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { sayOdd } from '#plan/songs/oddText.ts'
import { formatMarks, formatQuiet } from '#plan/songs/songPlace.ts'
import { formatTempo } from '#plan/songs/songRules.ts'
import { sayLength } from '#plan/words.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEffort } from '#units/formatEffort.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { formatSetting, formatSettingRange } from '#units/formatSetting.ts'
import { plural } from '#units/plural.ts'
import { type Counts, EIGHT } from '#units/units.ts'
import { isLanguage, LANGUAGES } from '#words/language.ts'
import { words } from '#words/words.ts'
import { isRule, RULE } from './sayField.ts'

/** What a value is said with: the scale, the leaders' names, and what a song counts by: eight, or six. */
type Of = Pick<Ride, 'bike' | 'leaders'> & { eight?: Counts }
type Say = (value: never, ride: Of) => string

const NONE = 'none'

const text = (value: string) => (value === '' ? NONE : `“${value}”`)
const word = (value: string) => WORDS[value] ?? value
const yes = (value: boolean) => (value ? 'yes' : 'no')
const seconds = (value: number) => formatDuration(value)
const number = (value: number) => formatNumber(value, 2)
const leader = (id: string, { leaders }: Of) => leaders.find((one) => one.id === id)?.name || id

/** Values that are not the word they are said with. */
const WORDS: Record<string, string> = {
  legsStill: 'legs still',
  countIn: 'count-in',
  loose: 'the loose wheel',
}

/** How a value of each field is said, by kind of thing and field; text and words as they are unless named here. */
const SAYS: Record<string, Say> = {
  'ride slotMinutes': (minutes: number) => `${formatNumber(minutes)} min`,
  'ride briefingSeconds': seconds,
  'ride clearUpSeconds': seconds,
  'ride startsAt': (clock: string) => clock,
  'ride bike': sayBike,
  'ride leaders': (leaders: Leader[]) => joinWords(leaders.map(({ name }) => name)),
  'ride leader.wordsPerMinute': number,
  'ride avoidMoves': (moves: string[]) => joinWords(moves) || NONE,
  'section leadInSeconds': seconds,
  'section ridden': ({ inCount = 0, outCount }: { inCount?: number; outCount?: number }) =>
    outCount === undefined ? `from count ${inCount}` : `counts ${inCount} to ${outCount}`,
  'section song': ({ song }: { song?: Song | null }) => (song ? saySong(song) : 'no song'),
  'section song.grid': (grid: BeatGrid) =>
    [
      `${formatTempo(tempoOf(grid))} bpm`,
      `${grid.beatsPerBar} a bar`,
      `first beat at ${formatNumber(grid.anchors[0]![1], 3)} s`,
      ...(grid.odd ?? []).slice(0, MOST_PLACES).map((place) => sayOdd(place, eightOf(grid))),
    ].join(', '),
  'section song.lengthSeconds': (length: number) => formatClock(length),
  'section song.strikesPerBeat': strikes,
  'section song.marks': (marks: NonNullable<Song['marks']>, { eight = EIGHT }: Of) =>
    inEights(formatMarks(marks, eight).split('\n'), eight),
  'section song.quiet': (quiet: NonNullable<Song['quiet']>, { eight = EIGHT }: Of) =>
    inEights(formatQuiet(quiet, eight).split(', '), eight),
  'section song.fingerprint': (print: string) => `heard in the file ${print.slice(0, 6)}`,
  'block posture': (posture: Posture) => POSTURE_WORDS[posture].is,
  'set rounds': (rounds: number) => plural(rounds, 'round'),
  'set perRound': ({ steps }: { steps: number }, { bike }: Of) => `${formatChange(steps, bike)} a round`,
  'block length': (length: Length, { eight = EIGHT }: Of) => sayLength(length, eight),
  'block resistance': (call: Resistance, { bike }: Of) => sayResistance(call, bike),
  'block ownTotal': (steps: number, { bike }: Of) => formatSetting(steps, bike.stepsPerUnit),
  'block cadence': sayCadence,
  'block strikesPerBeat': strikes,
  'block effort': ({ from, to }: { from: number; to: number }) =>
    from === to ? formatEffort(from) : `${formatEffort(from)} to ${formatEffort(to)}`,
  'block move': ({ name, counts, side, then }: Move) =>
    [`${name} on ${counts}`, side && `${side}${then ? ' first' : ''}`].filter((part) => part !== undefined).join(', '),
  'block easier': ({ text: words }: { text: string }) => text(words),
  'block harder': ({ text: words }: { text: string }) => text(words),
  'block leader': leader,
  'block mic': leader,
  'block eights': ({ minEights, maxEights }: { minEights?: number; maxEights?: number }) =>
    [minEights !== undefined && `at least ${minEights}`, maxEights !== undefined && `at most ${maxEights}`].filter(Boolean).join(', '),
  'cue lead': (lead: Length) => ('counts' in lead ? plural(lead.counts, 'count') : formatDuration(lead.seconds)),
  'cue count': (count: number) => `count-in of ${count}`,
}

/** "“Low Tide”, 3:45, 128 bpm": two recordings of one title are told apart. */
function saySong({ title, lengthSeconds, grid }: Song): string {
  return [text(title), formatClock(Math.round(lengthSeconds)), grid && `${formatTempo(tempoOf(grid))} bpm`].filter(Boolean).join(', ')
}

const MOST_PLACES = 6

/** Places in a song by the numbers of its eights; the first few where there are many. */
const inEights = (places: readonly string[], eight: Counts): string => {
  const more = places.length - MOST_PLACES
  return `at the ${eight === EIGHT ? 'eights' : 'sixes'} ${places.slice(0, MOST_PLACES).join(', ')}${more > 0 ? ` and ${more} more` : ''}`
}

/** Fields whose text is somebody's own words. */
const QUOTED = new Set([
  ...['title', 'aim', 'privateNotes', 'location', 'name', 'label', 'notes', 'feel', 'text', 'song.title', 'song.artist', 'leader.name'],
  ...['standIn.room', 'standIn.regulars', 'standIn.mustDo', 'standIn.mustNot'],
])

/** A value as it is said in a list of changes; "none" where there is none. */
export function sayValue(of: string, field: string, value: unknown, ride: Of): string {
  if (of === 'ride' && field === 'language') return LANGUAGES[isLanguage(value) ? value : 'en']
  if (value === undefined || value === null) return field.endsWith('strikesPerBeat') && value === null ? 'off the beat' : NONE
  if (field.startsWith('rider.')) return text((value as Rider).name)
  if (field.startsWith(RULE)) return sayRule(field.slice(RULE.length), value)
  const say = SAYS[`${of} ${field}`]
  if (say) return say(value as never, ride)
  if (typeof value === 'boolean') return yes(value)
  if (typeof value === 'number') return number(value)
  return typeof value === 'string' ? (QUOTED.has(field) ? text(value) : word(value)) : 'changed'
}

function sayRule(name: string, value: unknown): string {
  const unit = isRule(name) ? ` ${words.rules.unit({ unit: CONSTANTS[name].unit })}` : ''
  return typeof value === 'number' ? `${formatNumber(value, 3)}${unit}` : 'changed'
}

function strikes(value: number): string {
  if (value === 0.5) return 'one every other beat'
  return value === 1 ? 'one a beat' : 'two a beat'
}

function sayCadence(cadence: Cadence): string {
  if (cadence === 'legsStill') return 'legs still'
  const { rpm, rampTo } = cadence
  return rampTo === undefined ? `${formatNumber(rpm)} rpm` : `${formatNumber(rpm)} to ${formatNumber(rampTo)} rpm`
}

function sayResistance(call: Resistance, scale: Scale): string {
  const checkpoint = checkpointOf(call)
  const parts = [
    sayCallAlone(call, scale),
    call.kind === 'total' && call.aim !== undefined && `aim ${formatSetting(call.aim, scale.stepsPerUnit)}`,
    checkpoint && `be at ${formatSettingRange(checkpoint, scale.stepsPerUnit)}`,
  ]
  return parts.filter(Boolean).join(', ')
}

function sayCallAlone(call: Resistance, scale: Scale): string {
  switch (call.kind) {
    case 'keep':
      return 'stay'
    case 'allOff':
      return 'all off'
    case 'total':
      return `to ${formatSettingRange(call, scale.stepsPerUnit)}`
    case 'byFeel':
      return `to ${formatSettingRange(call, scale.stepsPerUnit)} by feel`
    case 'change': {
      const change = formatChange(call.steps, scale)
      return call.mode === 'exact' ? change : `${change} ${call.mode === 'atLeast' ? 'or more' : 'if you have it'}`
    }
  }
}

/** "knob, quarter turns (calibrated by watts, brake fitted)": two states of one bike are told apart. */
function sayBike({ name, unit, calibration, brakeFit }: Bike): string {
  const known = [calibration && `calibrated by ${calibration}`, brakeFit && 'brake fitted'].filter(Boolean)
  return known.length === 0 ? name || unit : `${name || unit} (${known.join(', ')})`
}
