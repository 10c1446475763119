import { capitalized, grouped, number, or, plural } from '#words/forms.ts'
import { UNITS } from './documentParts.ts'

/** What is wrong with a value in a ride's file: one entry a problem. */

/** Where the value stands, with what it is called (`documents.at`), and what was found there where that helps. */
interface At {
  at: string
  found?: string | undefined
}

const told = ({ at, found }: At, wrong: string) => `${capitalized(at)} ${wrong}${found === undefined ? '' : `; it is ${found}`}.`

interface Bounds extends At {
  low: number
  high: number
  unit?: keyof typeof UNITS | undefined
}

interface Two extends At {
  low: number
  high: number
}

interface Most extends At {
  count: number
  most: number
}

const of = (unit?: keyof typeof UNITS) => (unit === undefined ? '' : ` ${UNITS[unit]}`)

export const problems = {
  // The shape of a ride
  missing: (at: At) => told(at, 'is missing'),
  text: (at: At) => told(at, 'must be text'),
  longText: ({ most, ...at }: At & { most: number }) => told(at, `is too long; the limit is ${plural(most, 'character', 'characters')}`),
  emptyText: (at: At) => told(at, 'must not be empty'),
  revision: (at: At) => told(at, 'must be 16 hexadecimal digits'),
  id: (at: At) => told(at, 'must start with a letter or digit and have only letters, digits, and . _ : - in it'),
  clock: (at: At) => told(at, 'must be a time of day such as 18:30'),
  number: (at: At) => told(at, 'must be a number'),
  whole: (at: At) => told(at, 'must be a whole number'),
  between: ({ low, high, unit, ...at }: Bounds) => told(at, `must be between ${grouped(low)} and ${grouped(high)}${of(unit)}`),
  above: ({ low, high, unit, ...at }: Bounds) => told(at, `must be more than ${grouped(low)} and at most ${grouped(high)}${of(unit)}`),
  yesOrNo: (at: At) => told(at, 'must be true or false'),
  oneOf: ({ choices, ...at }: At & { choices: readonly string[] }) => told(at, `must be ${or(choices)}`),
  group: (at: At) => told(at, 'must be a group of named values'),
  list: (at: At) => told(at, 'must be a list'),
  shortList: ({ fewest, ...at }: At & { fewest: number }) => told(at, `must have at least ${plural(fewest, 'entry', 'entries')}`),
  longList: ({ most, ...at }: At & { most: number }) => told(at, `has too many entries; the limit is ${grouped(most)}`),
  pair: (at: At) => told(at, 'must be a pair of numbers'),
  countsOrSeconds: (at: At) => told(at, 'must be in counts or in seconds, not both'),

  // What holds between values
  repeatedId: ({ id, ...at }: At & { id: string }) => told(at, `is used twice (“${id}”); every song, block, and cue needs its own`),
  lengthInCounts: (at: At) => told(at, 'must be in counts, because the song has a beat grid'),
  lengthInSeconds: (at: At) => told(at, 'must be in seconds, because there is no beat grid to count by'),
  noSuchLeader: ({ id, ...at }: At & { id: string }) => told(at, `is not one of this ride’s instructors (“${id}”)`),
  lowAboveHigh: ({ low, high, ...at }: Two) =>
    told(at, `must not be under the lower one; the range runs from ${number(low)} to ${number(high)}`),
  endOfOpen: ({ low, high, ...at }: Two) =>
    told(at, `must be the same as the lower one where it says “or more”; they are ${number(low)} and ${number(high)}`),
  aimOutside: ({ low, high, ...at }: Two) => told(at, `must be within its range, ${number(low)} to ${number(high)}`),
  notRising: (at: At) => told(at, 'must come later than the one before, in counts and in seconds'),
  oddNotWhole: (at: At) => told(at, 'must be whole numbers'),
  oddNone: (at: At) => told(at, 'must add or drop at least one beat'),
  oddNotRising: (at: At) => told(at, 'must come later than the one before'),
  oddNoRoom: (at: At) => told(at, 'must not drop more beats than are counted since the one before, or since the song begins'),
  tempo: ({ low, high, bpm, ...at }: Two & { bpm: number }) =>
    told(at, `gives a tempo outside ${number(low)} to ${number(high)} bpm (${number(bpm, 0)})`),
  tempoEndless: ({ low, high, ...at }: Two) => told(at, `gives a tempo outside ${number(low)} to ${number(high)} bpm (no end to it)`),
  outBeforeIn: ({ from, to, ...at }: At & { from: number; to: number }) =>
    told(at, `must come after the starting point; the song plays from ${number(from)} to ${number(to)}`),
  emptyStretch: (at: At) => told(at, 'must come after the start'),
  eightsCrossed: ({ low, high, ...at }: Two) => told(at, `must not be below the lowest; they are ${number(low)} and ${number(high)}`),
  wholeSteps: ({ setting, stepsPerUnit, ...at }: At & { setting: number; stepsPerUnit: number }) =>
    told(at, `must be a whole number of steps; ${number(setting, 9)} at ${number(stepsPerUnit)} steps per unit is not`),
  settingsCrossed: ({ low, high, ...at }: Two) => told(at, `must be above the lowest; they are ${number(low, 9)} and ${number(high, 9)}`),
  baseOutside: ({ low, high, ...at }: Two) =>
    told(at, `must be between the lowest and the highest setting, ${number(low, 9)} and ${number(high, 9)}`),
  pointsNotRising: (at: At) => told(at, 'must be at a higher setting than the one before, with no fewer watts'),
  maxHrTooLow: (at: At) => told(at, 'must be above the resting heart rate'),
  thresholdOutOfOrder: (at: At) => told(at, 'must be in order: resting, first threshold, second threshold, max'),

  // What a ride comes to
  playsTooMuch: ({ count, most, ...at }: Most) =>
    told(at, `has ${grouped(count)} blocks when all rounds are counted; the limit is ${grouped(most)}`),
  saysTooMuch: ({ count, most, ...at }: Most) => told(at, `has ${grouped(count)} cues to say; the limit is ${grouped(most)}`),
  tooManyWords: ({ count, most, ...at }: Most) =>
    told(at, `has ${grouped(count)} letters on its blocks and cues; the limit is ${grouped(most)}`),
  lastsTooLong: ({ count, most, ...at }: Most) => told(at, `lasts ${grouped(count)} hours; the limit is ${grouped(most)}`),
}
