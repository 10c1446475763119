/**
 * The shape of a ride as data: which fields there are, of what kind and within which
 * bounds. The types are written by hand in model.ts; the last lines hold the two equal.
 * What needs more than one value to judge is in rules/.
 */

import * as v from 'valibot'
import { LONGEST_LEAD } from '#plan/cueStart.ts'
import { CUE_MOMENTS, CURRENT_SCHEMA, HANDS, POSTURES, TERRAINS } from '#plan/model.ts'
import { LANGUAGES, type Language } from '#words/language.ts'
import {
  either,
  filled,
  group,
  has,
  list,
  listFrom,
  number,
  numberAbove,
  oneOf,
  oneOfMessage,
  pair,
  text,
  whole,
  yesOrNo,
} from './schemaKit.ts'
import { messageOf as message } from './wrong.ts'

/** The bounds of a document, in one place: far above any class, low enough that opening one stays quick. */
export const LIMITS = {
  sections: 100,
  items: 400,
  parts: 60,
  rounds: 100,
  /** Of a whole ride: blocks as they are ridden, cues as they are said, letters on blocks and cues, and time. */
  played: 1_000,
  spoken: 3_000,
  letters: 300_000,
  hours: 24,
  cues: 40,
  leaders: 2,
  riders: 40,
  trials: 20,
  anchors: 5_000,
  anchor: 1_000_000,
  odd: 200,
  oddBeats: 64,
  points: 60,
  marks: 200,
  houseRules: 100,
  avoidMoves: 60,
  setAside: 500,
  shaky: 500,
  findingId: 200,
  ancestors: 8,
  id: 64,
  name: 120,
  line: 300,
  cueText: 600,
  notes: 10_000,
  counts: 100_000,
  steps: 10_000,
  seconds: 21_600,
  tempo: { low: 20, high: 400 },
} as const

const id = v.pipe(
  v.string(message({ problem: 'text' })),
  v.regex(/^[A-Za-z0-9][A-Za-z0-9._:-]*$/, message({ problem: 'id' })),
  v.maxLength(LIMITS.id, message({ problem: 'longText', most: LIMITS.id })),
)

const steps = whole(-LIMITS.steps, LIMITS.steps, 'steps')
const counts = whole(0, LIMITS.counts, 'counts')
const foot = oneOf(['left', 'right'])
const strikesPerBeat = v.nullable(oneOf([0.5, 1, 2]))
const option = group({ text: filled(LIMITS.line) })

const notBoth = v.never(message({ problem: 'countsOrSeconds' }))
const inBoth = (input: unknown) => has(input, 'counts') && has(input, 'seconds')
const inSeconds = (input: unknown) => has(input, 'seconds')

/** Counts or seconds, one of the two. */
const measured = <A extends v.GenericSchema, B extends v.GenericSchema>(inCountsSchema: A, inSecondsSchema: B) =>
  either(inBoth, either(inSeconds, inCountsSchema, inSecondsSchema), notBoth)

const lengthSchema = measured(
  group({ counts: whole(1, LIMITS.counts, 'counts') }),
  group({ seconds: numberAbove(0, LIMITS.seconds, 'seconds') }),
)

const cueSchema = group({
  id,
  moment: oneOf(CUE_MOMENTS),
  lead: measured(
    group({ counts: whole(0, LONGEST_LEAD.counts, 'counts') }),
    group({ seconds: number(0, LONGEST_LEAD.seconds, 'seconds') }),
  ),
  text: text(LIMITS.cueText),
  count: v.optional(oneOf([4, 8])),
})

const range = { from: steps, to: steps, orMore: v.optional(v.literal(true, oneOfMessage([true]))) }
const checkpoint = v.optional(group(range))

const resistanceSchema = v.variant(
  'kind',
  [
    group({ kind: v.literal('keep'), checkpoint }),
    group({
      kind: v.literal('change'),
      mode: oneOf(['exact', 'atLeast', 'ifYouHaveIt']),
      steps,
      checkpoint,
    }),
    group({ kind: v.literal('total'), ...range, aim: v.optional(steps), checkpoint }),
    group({ kind: v.literal('byFeel'), ...range }),
    group({ kind: v.literal('allOff') }),
  ],
  oneOfMessage(['keep', 'change', 'total', 'byFeel', 'allOff']),
)

const rpm = number(1, 250, 'rpm')
const cadenceSchema = either(
  (input) => typeof input === 'string',
  group({ rpm, rampTo: v.optional(rpm) }),
  v.literal('legsStill', oneOfMessage(['legsStill'])),
)

const effort = number(0, 10)
const eights = whole(1, 1_000, 'eights')

const blockSchema = group({
  id,
  label: v.optional(text(LIMITS.name)),
  terrain: oneOf(TERRAINS),
  length: lengthSchema,
  posture: oneOf(POSTURES),
  hands: oneOf(HANDS),
  resistance: resistanceSchema,
  ownTotal: v.optional(steps),
  cadence: v.optional(cadenceSchema),
  strikesPerBeat: v.optional(strikesPerBeat),
  effort: group({ from: effort, to: effort }),
  lead: v.optional(oneOf(['keep', 'swap', 'left', 'right'])),
  move: v.optional(
    group({
      name: filled(LIMITS.name),
      counts: whole(1, 1_024, 'counts'),
      side: v.optional(foot),
      // biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
      then: v.optional(v.literal('alternate', oneOfMessage(['alternate']))),
    }),
  ),
  allOut: v.optional(yesOrNo),
  water: v.optional(yesOrNo),
  walk: v.optional(yesOrNo),
  easier: v.optional(option),
  harder: v.optional(option),
  feel: v.optional(text(LIMITS.line)),
  cues: list(cueSchema, LIMITS.cues),
  leader: v.optional(id),
  mic: v.optional(id),
  locked: v.optional(yesOrNo),
  minEights: v.optional(eights),
  maxEights: v.optional(eights),
  notes: v.optional(text(LIMITS.notes)),
})

const setSchema = group({
  id,
  label: v.optional(text(LIMITS.name)),
  rounds: whole(1, LIMITS.rounds, 'rounds'),
  parts: listFrom(blockSchema, 1, LIMITS.parts),
  perRound: v.optional(group({ steps })),
})

export const itemSchema = either((input) => has(input, 'parts'), blockSchema, setSchema)

/** Far beyond the song: a tempo with decimals is written as its whole beats in a thousand minutes. */
const anchor = pair(whole(-LIMITS.anchor, LIMITS.anchor, 'counts'), number(-LIMITS.anchor, LIMITS.anchor, 'seconds'))

/** More beats than that at one place are a part of the song of its own. */
const oddPlace = pair(whole(1, LIMITS.counts, 'counts'), whole(-LIMITS.oddBeats, LIMITS.oddBeats, 'beats'))

export const songSchema = group({
  id,
  title: text(LIMITS.line),
  artist: v.optional(text(LIMITS.line)),
  grid: v.optional(
    group({
      anchors: listFrom(anchor, 2, LIMITS.anchors),
      beatsPerBar: oneOf([3, 4, 6]),
      odd: v.optional(listFrom(oddPlace, 1, LIMITS.odd)),
    }),
  ),
  lengthSeconds: numberAbove(0, LIMITS.seconds, 'seconds'),
  strikesPerBeat,
  marks: v.optional(list(group({ count: counts, label: text(LIMITS.name) }), LIMITS.marks)),
  quiet: v.optional(list(group({ from: counts, to: counts }), LIMITS.marks)),
  clean: v.optional(yesOrNo),
  fingerprint: v.optional(filled(LIMITS.line)),
})

export const sectionSchema = group({
  id,
  title: v.optional(text(LIMITS.line)),
  song: v.optional(v.nullable(songSchema)),
  inCount: v.optional(counts),
  outCount: v.optional(counts),
  leadInSeconds: number(-600, 600, 'seconds'),
  lead: v.optional(foot),
  blocks: list(itemSchema, LIMITS.items),
  notes: v.optional(text(LIMITS.notes)),
})

const setting = number(0, 1_000)

export const bikeSchema = group({
  id,
  name: text(LIMITS.name),
  unit: filled(LIMITS.name),
  stepsPerUnit: whole(1, 100),
  min: v.optional(setting),
  max: numberAbove(0, 1_000),
  base: setting,
  brake: oneOf(['friction', 'magnetic']),
  brakeFit: v.optional(group({ exponent: number(1, 2), error: number(0, 1) })),
  referenceRpm: rpm,
  points: listFrom(pair(setting, number(0, 3_000, 'watts')), 2, LIMITS.points),
  feelAnchors: v.optional(list(group({ feel: filled(LIMITS.name), setting }), LIMITS.points)),
  calibration: v.optional(oneOf(['watts', 'feel'])),
})

const leaderSchema = group({ id, name: text(LIMITS.name), wordsPerMinute: number(40, 400, 'wordsPerMinute') })

const heartRate = number(60, 260, 'bpm')

const riderSchema = group({
  id,
  name: text(LIMITS.name),
  massKg: number(20, 300, 'kg'),
  age: number(5, 120, 'years'),
  vo2max: number(5, 110, 'oxygen'),
  criticalPower: number(1, 1_000, 'watts'),
  wPrime: number(1, 200_000, 'joules'),
  restingHr: number(20, 150, 'bpm'),
  maxHr: v.optional(heartRate),
  firstThresholdHr: v.optional(heartRate),
  secondThresholdHr: v.optional(heartRate),
  basis: v.optional(oneOf(['assumed', 'tested'])),
  trials: v.optional(list(group({ seconds: numberAbove(0, 7_200, 'seconds'), watts: numberAbove(0, 3_000, 'watts') }), LIMITS.trials)),
  threeMinuteTest: v.optional(
    group({
      over: oneOf([180, 150]),
      watts: numberAbove(0, 3_000, 'watts'),
      endWatts: numberAbove(0, 3_000, 'watts'),
      peakSecond: v.optional(number(0, 180, 'seconds')),
    }),
  ),
  baseOffset: number(-1_000, 1_000),
})

export const houseRulesSchema = v.pipe(
  v.record(filled(LIMITS.name), number(-1e9, 1e9), message({ problem: 'group' })),
  v.maxEntries(LIMITS.houseRules, message({ problem: 'longList', most: LIMITS.houseRules })),
)

export const avoidMovesSchema = list(filled(LIMITS.name), LIMITS.avoidMoves)

export const ridersSchema = list(riderSchema, LIMITS.riders)

export const rideSchema = group({
  schema: v.literal(CURRENT_SCHEMA),
  id,
  title: text(LIMITS.line),
  language: v.optional(oneOf(Object.keys(LANGUAGES) as Language[])),
  aim: v.optional(text(LIMITS.line)),
  level: oneOf(['beginner', 'mixed', 'advanced']),
  slotMinutes: number(1, 360, 'minutes'),
  startsAt: v.optional(
    v.pipe(v.string(message({ problem: 'clock' })), v.regex(/^([01][0-9]|2[0-3]):[0-5][0-9]$/, message({ problem: 'clock' }))),
  ),
  briefingSeconds: number(0, 7_200, 'seconds'),
  clearUpSeconds: number(0, 7_200, 'seconds'),
  datum: oneOf(['base', 'loose']),
  bike: bikeSchema,
  room: v.optional(oneOf(['studio', 'online'])),
  location: v.optional(text(LIMITS.name)),
  leaders: listFrom(leaderSchema, 1, LIMITS.leaders),
  sections: list(sectionSchema, LIMITS.sections),
  houseRules: v.optional(houseRulesSchema),
  avoidMoves: v.optional(avoidMovesSchema),
  standIn: v.optional(
    group({
      room: v.optional(text(LIMITS.notes)),
      regulars: v.optional(text(LIMITS.notes)),
      mustDo: v.optional(text(LIMITS.notes)),
      mustNot: v.optional(text(LIMITS.notes)),
    }),
  ),
  parent: v.optional(group({ rideId: id, revision: text(LIMITS.name) })),
  ancestors: v.optional(
    list(v.pipe(v.string(message({ problem: 'text' })), v.regex(/^[0-9a-f]{16}$/, message({ problem: 'revision' }))), LIMITS.ancestors),
  ),
  riders: v.optional(ridersSchema),
  setAside: v.optional(list(filled(LIMITS.findingId), LIMITS.setAside)),
  shaky: v.optional(list(id, LIMITS.shaky)),
  privateNotes: v.optional(text(LIMITS.notes)),
})

/** The parts of a ride by the names they have in the published JSON Schema. */
export const SCHEMA_PARTS = {
  bike: bikeSchema,
  block: blockSchema,
  cue: cueSchema,
  length: lengthSchema,
  resistance: resistanceSchema,
  section: sectionSchema,
  set: setSchema,
  song: songSchema,
}
