import { CONSTANTS } from '#engine/constants.ts'
import { checkpointOf } from '#plan/ledger/applyCall.ts'
import type { FieldName, ValueOf } from '#plan/merge/fieldValues.ts'
import { type Bike, type Cadence, type Resistance, type Ride, type Song, tempoOf } from '#plan/model.ts'
import { lengthText } from '#plan/names.ts'
import type { Rider } from '#plan/riderModel.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { oddText } from '#plan/songs/oddText.ts'
import { formatMarks, formatQuiet } from '#plan/songs/songPlace.ts'
import { type Counts, EIGHT } from '#units/units.ts'
import { and, clock, duration, number, setting, wallClock } from '#words/forms.ts'
import { isLanguage, LANGUAGES } from '#words/language.ts'
import { tell, words } from '#words/words.ts'
import { isRule, RIDER, RULE } from './sayField.ts'

/** What a value is said with: the scale, the leaders' names, and what a song counts by: eight, or six. */
type Of = Pick<Ride, 'bike' | 'leaders'> & { eight?: Counts }

const quoted = (text: string) => (text === '' ? words.mergeFields.none : words.names.quoted({ name: text }))
const yes = (value: boolean) => words.mergeFields.yes({ yes: value })
const leader = (id: string, { leaders }: Of) => leaders.find((one) => one.id === id)?.name || id
const strikes = (value: 0.5 | 1 | 2 | null) => words.mergeFields.strikes({ strikes: value })
const effort = (value: { readonly from: number; readonly to: number }) => words.mergeFields.effort(value)

/** How a value of each field is said. */
const SAYS: { readonly [Name in FieldName]: (value: ValueOf<Name>, of: Of) => string } = {
  'ride title': quoted,
  'ride language': (language) => LANGUAGES[language],
  'ride aim': quoted,
  'ride level': (level) => words.names.level({ level }),
  'ride slotMinutes': (minutes) => words.mergeFields.minutes({ minutes }),
  'ride startsAt': wallClock,
  'ride briefingSeconds': duration,
  'ride clearUpSeconds': duration,
  'ride datum': (datum) => words.mergeFields.datum({ datum }),
  'ride bike': sayBike,
  'ride room': (room) => words.mergeFields.room({ room }),
  'ride location': quoted,
  'ride leaders': (leaders) => and(leaders.map(({ name }) => name)),
  'ride leader.name': quoted,
  'ride leader.wordsPerMinute': (rate) => number(rate),
  'ride avoidMoves': (moves) => and(moves) || words.mergeFields.none,
  'ride standIn.room': quoted,
  'ride standIn.regulars': quoted,
  'ride standIn.mustDo': quoted,
  'ride standIn.mustNot': quoted,
  'ride privateNotes': quoted,

  'section title': quoted,
  'section leadInSeconds': duration,
  'section lead': (foot) => words.names.foot({ foot }),
  'section ridden': ({ inCount = 0, outCount }) => words.mergeFields.ridden({ from: inCount, to: outCount }),
  'section song': ({ song }) => (song ? saySong(song) : words.mergeFields.noSong),
  'section song.title': quoted,
  'section song.artist': quoted,
  'section song.grid': (grid) => {
    const odd = (grid.odd ?? []).slice(0, MOST_PLACES).map((place) => tell(oddText(place, eightOf(grid))))
    return words.mergeFields.grid({ bpm: tempoOf(grid), beats: grid.beatsPerBar, firstBeat: grid.anchors[0]![1], odd })
  },
  'section song.lengthSeconds': clock,
  'section song.strikesPerBeat': strikes,
  'section song.marks': (marks, { eight = EIGHT }) => places(formatMarks(marks, eight).split('\n'), eight),
  'section song.quiet': (quiet, { eight = EIGHT }) => places(formatQuiet(quiet, eight).split(', '), eight),
  'section song.clean': yes,
  'section song.fingerprint': (print) => words.mergeFields.fingerprint({ print: print.slice(0, 6) }),
  'section notes': quoted,

  'set label': quoted,
  'set rounds': (rounds) => words.mergeFields.rounds({ rounds }),
  'set perRound': ({ steps }, { bike }) => words.mergeFields.perRound({ steps, perUnit: bike.stepsPerUnit }),

  'block label': quoted,
  'block terrain': (terrain) => words.names.terrain({ terrain }),
  'block length': (length, { eight = EIGHT }) => tell(lengthText(length, eight)),
  'block posture': (posture) => words.names.posture({ posture }),
  'block hands': (hands) => words.names.hands({ hands }),
  'block resistance': (call, { bike }) => sayResistance(call, bike.stepsPerUnit),
  'block ownTotal': (steps, { bike }) => setting(steps, bike.stepsPerUnit),
  'block cadence': sayCadence,
  'block strikesPerBeat': strikes,
  'block effort': effort,
  'block lead': (lead) => words.mergeFields.leadFoot({ lead }),
  'block move': ({ name, counts, side, then }) => words.mergeFields.move({ name, counts, side, alternates: then !== undefined }),
  'block allOut': yes,
  'block water': yes,
  'block walk': yes,
  'block easier': ({ text }) => quoted(text),
  'block harder': ({ text }) => quoted(text),
  'block feel': quoted,
  'block leader': leader,
  'block mic': leader,
  'block locked': yes,
  'block eights': ({ minEights, maxEights }) => words.mergeFields.eights({ least: minEights, most: maxEights }),
  'block notes': quoted,

  'cue moment': (moment) => words.mergeFields.moment({ moment }),
  'cue lead': (lead) => ('counts' in lead ? words.mergeFields.counts(lead) : words.mergeFields.seconds(lead)),
  'cue text': quoted,
  'cue count': (count) => words.mergeFields.countIn({ count }),
}

/** A value as it is said in a list of changes; "none" where there is none. */
export function sayValue(of: string, field: string, value: unknown, ride: Of): string {
  // English unless given.
  if (of === 'ride' && field === 'language') return LANGUAGES[isLanguage(value) ? value : 'en']
  if (value === undefined || (value === null && !field.endsWith('strikesPerBeat'))) return words.mergeFields.none
  if (field.startsWith(RIDER)) return quoted((value as Rider).name)
  if (field.startsWith(RULE)) return sayRule(field.slice(RULE.length), value)
  return SAYS[`${of} ${field}` as FieldName](value as never, ride)
}

function sayRule(name: string, value: unknown): string {
  if (typeof value !== 'number') return words.mergeFields.changed
  return words.mergeFields.ruleValue({ value, unit: isRule(name) ? CONSTANTS[name].unit : '' })
}

const saySong = ({ title, lengthSeconds, grid }: Song): string =>
  words.mergeFields.song({ title: quoted(title), seconds: Math.round(lengthSeconds), bpm: grid && tempoOf(grid) })

const MOST_PLACES = 6

/** Places in a song by the numbers of its eights; the first few where there are many. */
const places = (all: readonly string[], unit: Counts): string =>
  words.mergeFields.places({ places: all.slice(0, MOST_PLACES), more: all.length - MOST_PLACES, unit })

function sayCadence(cadence: Cadence): string {
  if (cadence === 'legsStill') return words.mergeFields.legsStill
  const { rpm, rampTo = rpm } = cadence
  return words.mergeFields.cadence({ from: rpm, to: rampTo })
}

function sayResistance(call: Resistance, perUnit: number): string {
  const aim = call.kind === 'total' ? call.aim : undefined
  return words.mergeFields.resistance({ call, aim, checkpoint: checkpointOf(call), perUnit })
}

/** Two states of one bike are told apart. */
function sayBike({ name, unit, calibration, brakeFit }: Bike): string {
  return words.mergeFields.bike({ name: name || unit, calibration, fitted: brakeFit !== undefined })
}
