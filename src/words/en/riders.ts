import { clock, number, percent } from '#words/forms.ts'
import { measures } from './measures.ts'
import { names } from './names.ts'

/** The modelled riders of a ride, their numbers, and the tests of what they can do. */

const NUMBERS = {
  massKg: { name: 'weight', unit: '', means: 'The same watts cost a heavier rider less of the reserve per kilogram.' },
  age: { name: 'age', unit: 'years', means: 'Sets the max heart rate where none is known.' },
  vo2max: {
    name: 'VO2 max',
    unit: 'mL/kg/min',
    means: 'The most oxygen the rider can use: estimated effort and heart rate are shares of it. Many adults are between 25 and 50.',
  },
  criticalPower: {
    name: 'critical power',
    unit: 'watts',
    means: 'What the rider can hold without running down the reserve: about the best for half an hour, not for an hour.',
  },
  wPrime: { name: 'reserve', unit: 'kJ', means: 'Work left above critical power. It drains above and refills below. Usually 8 to 25.' },
  restingHr: { name: 'resting heart rate', unit: 'bpm', means: 'Where the predicted heart rate starts.' },
  maxHr: { name: 'max heart rate', unit: 'bpm', means: 'Leave it empty for 208 − 0.7 × age, which can be off by ten either way.' },
  firstThresholdHr: {
    name: 'first threshold',
    unit: 'bpm',
    means: 'If a step test found it: below it, the rider talks in whole sentences.',
  },
  secondThresholdHr: { name: 'second threshold', unit: 'bpm', means: 'If a step test found it: above it, no pace lasts.' },
  baseOffset: { name: 'own base', unit: '', means: 'How far this rider’s base is from the bike’s. Resistance counts from there.' },
}

type NumberName = keyof typeof NUMBERS

const KINDS = { assumed: 'assumed', tested: 'tested' }

const watts = (value: number) => number(value, 0)
const kJ = (joules: number) => number(joules / 1000, 1)

export const riders = {
  heading: 'riders for this ride',
  typical: 'Three typical riders.',
  typicalSource: 'Common practice, no source.',
  about: ({ rider, level }: { rider: string; level: Parameters<typeof names.level>[0]['level'] }) =>
    `Checks use ${rider}, because the class is ${names.level({ level })}. Riders never go into a link: whoever opens one sees the three typical riders.`,
  add: 'add a rider',
  backToTypical: 'back to the three typical riders',
  /** The name of one that was added. */
  numbered: ({ number: place }: { number: number }) => `rider ${place}`,

  keptTitle: 'saved riders',
  keptEmpty: 'None yet. Save a set of riders, such as those of a class you teach every week.',
  keepThem: 'save these riders',

  // The line of the ride
  lineLabel: ({ rider }: { rider: string }) => `Planned effort over the ride, and estimated effort for ${rider}.`,
  lineCaption: ({ rider, kcal, low, high }: { rider: string; kcal: number; low: number; high: number }) =>
    `planned effort, and dashed the estimated effort for ${rider} in its range; about ${number(kcal, 0)} kcal (${number(low, 0)}–${number(high, 0)}).`,

  // The grid
  name: 'name',
  judged: 'Checks use this rider.',
  judgedFor: 'used by checks',
  nameOf: ({ place }: { place: number }) => `name of rider ${place}`,
  needsName: 'A rider needs a name.',
  numberName: ({ of }: { of: NumberName }) => NUMBERS[of].name,
  unit: ({ of }: { of: NumberName }) => NUMBERS[of].unit,
  means: ({ of }: { of: NumberName }) => NUMBERS[of].means,
  numberOf: ({ of, rider }: { of: NumberName; rider: string }) => `${NUMBERS[of].name} of ${rider}`,
  fromAge: 'from age',
  basis: 'critical power and reserve are',
  basisMeans: 'Tested ones give narrower estimates. A number you type over counts as assumed until you say otherwise.',
  basisOf: ({ rider }: { rider: string }) => `where critical power and reserve of ${rider} come from`,
  kindOfBasis: ({ kind }: { kind: keyof typeof KINDS }) => KINDS[kind],
  remove: 'remove',
  removeRider: ({ rider }: { rider: string }) => `remove ${rider}`,
  baseTooFar: ({ span, unit }: { span: number; unit: string }) =>
    `A rider’s base must be on the bike’s scale, at most ${number(span, 1)} ${measures.unitOf(unit, true)} from the bike’s base.`,

  // Numbers that cannot stand together
  restingTooHighForAge: ({ age, highest }: { age: number; highest: number }) =>
    `At ${age}, max heart rate is estimated at ${number(highest, 0)} bpm; resting heart rate must be lower.`,
  restingTooHigh: 'Max heart rate must be above resting heart rate.',
  firstTooLow: 'The first threshold must be above resting heart rate.',
  secondTooLow: 'The second threshold must be above resting heart rate.',
  thresholdsCrossed: 'The second threshold must be above the first.',
  thresholdTooHighForAge: ({ age, highest, second }: { age: number; highest: number; second: boolean }) =>
    `At ${age}, max heart rate is estimated at ${number(highest, 0)} bpm; lower the ${second ? 'second' : 'first'} threshold or enter the max.`,
  thresholdTooHigh: ({ second }: { second: boolean }) => `The ${second ? 'second' : 'first'} threshold must be below max heart rate.`,
  criticalTooHigh: ({ most, criticalPower, rider }: { most: number; criticalPower: number; rider: string }) =>
    `${watts(most)} watts use all the oxygen ${rider} can take up; a critical power of ${watts(criticalPower)} is very close to that or over it.`,
  criticalTooLow: ({ most, criticalPower, rider }: { most: number; criticalPower: number; rider: string }) =>
    `${watts(most)} watts use all the oxygen ${rider} can take up; a critical power of ${watts(criticalPower)} is far below that.`,

  // Tests
  testHeading: 'critical power from a test',
  testCaution:
    'All-out tests are for healthy, trained riders with medical clearance, well warmed up and with somebody watching. They are not for first-timers, and nobody does one for a class plan alone.',
  whoseTest: 'whose test',
  kindOfTest: 'kind of test',
  trials: 'two or more trials',
  threeMinutes: 'three minutes all out',
  heldFor: 'held for',
  averageWatts: 'average watts',
  lengthOfTrial: ({ place }: { place: number }) => `length of trial ${place}`,
  wattsOfTrial: ({ place }: { place: number }) => `watts of trial ${place}`,
  removeTrial: ({ place }: { place: number }) => `remove trial ${place}`,
  lengthOfNew: 'length of a new trial',
  wattsOfNew: 'watts of a new trial',
  another: 'another',
  trialsHow:
    'Ride each to exhaustion, rested, ideally on separate days: at least one of about 3 minutes and one of 12. Use watts from a calibrated bike.',
  trialLength: ({ shortest, longest }: { shortest: number; longest: number }) =>
    `A trial lasts from ${clock(shortest)} to ${clock(longest)}; write minutes and seconds, such as 3:00.`,
  averageOver: 'average watts are for',
  wholeTest: 'all three minutes',
  firstPart: 'the first 2½ minutes',
  averageHint: 'All out from the first second: no pacing, no clock in sight.',
  lastAverage: 'average of the last 30 s',
  lastAverageHint: 'What’s left at the end is critical power.',
  peakSecond: 'second of the peak',
  peakSecondHint: 'If the console shows it. All out, it’s in the first ten.',
  seconds: 's',
  watts: 'watts',
  rpm: 'rpm',
  needed: 'The test needs it; remove the test to leave it out.',
  removeTest: 'remove this test',
  usedFor: ({ rider }: { rider: string }) => `used for ${rider}`,
  takeFor: ({ rider }: { rider: string }) => `use these for ${rider}`,
  capacity: ({ criticalPower, wPrime, error }: Capacity) =>
    `Critical power ${watts(criticalPower)} watts${error ? `, give or take ${watts(error.criticalPower)}` : ''}; reserve ${kJ(wPrime)} kJ${error ? `, give or take ${kJ(error.wPrime)}` : ''}.`,
  curve: ({ trials }: { trials: readonly { watts: number; seconds: number }[] }) =>
    `Watts by how long they were held: ${trials.map((trial) => `${watts(trial.watts)} watts for ${clock(trial.seconds)}`).join(', ')}.`,
  curveCaption: 'watts held, by minutes; the dots are the trials, the dotted line is critical power',

  // Why a test gives nothing, and what speaks against it
  tooFew: 'Enter at least two trials of different lengths.',
  sameLength: 'The trials are all the same length: critical power needs two lengths well apart.',
  notFalling:
    'These trials don’t fall the way all-out trials do: a longer one has too many or too few watts for the shorter. One wasn’t all out, or has a typo.',
  notFallingThree: 'The last 30 seconds are no lower than the average: the test was paced, or a number has a typo.',
  trialShort: ({ seconds }: { seconds: number }) =>
    `The trial of ${clock(seconds)} is shorter than 2 minutes, where the model doesn’t hold.`,
  trialLong: ({ seconds }: { seconds: number }) =>
    `The trial of ${clock(seconds)} is longer than 15 minutes, where the model no longer holds well.`,
  allShort: ({ longest }: { longest: number }) =>
    `The longest trial is ${clock(longest)}: with none of 10 minutes or more, critical power comes out too high. Add one of 12 to 15.`,
  alike: ({ shortest, longest }: { shortest: number; longest: number }) =>
    `The trials are too much alike, ${clock(shortest)} to ${clock(longest)}: a small slip in one moves the result a lot. The longest should be at least twice the shortest.`,
  apart: ({ byWork, byPower, explained }: { byWork: number; byPower: number; explained: number }) =>
    `These trials don’t agree: critical power comes to ${watts(byWork)} or ${watts(byPower)} watts, depending on how the line is drawn (r² ${number(explained, 3)}). Ride the odd one again.`,
  onlyTwo: 'Two trials always fit. A third of another length tells how sure this is.',
  unusual: ({ wPrime }: { wPrime: number }) => `A reserve of ${kJ(wPrime)} kJ is rare; most people have 5 to 35. Look at the trials again.`,
  latePeak: ({ peakSecond }: { peakSecond: number }) =>
    `Power peaked at ${number(peakSecond)} s: an all-out start peaks in the first seconds. When paced, the test reads critical power too high.`,
  paced: ({ share }: { share: number }) =>
    `The end is ${percent(share)} of the average: the test was hardly all out, and critical power reads too high.`,
}

interface Capacity {
  criticalPower: number
  wPrime: number
  /** Give or take; null where the test does not tell. */
  error: { criticalPower: number; wPrime: number } | null
}
