import type { Problem, Quantity } from '#units/problem.ts'
import { number, setting } from '#words/forms.ts'
import { usMeasures } from '#words/locale.ts'
import { measures } from './measures.ts'

/** What is said under a field whose text cannot be read. */

interface Named {
  /** The head of a sentence. */
  readonly subject: string
  readonly unit: string
  /** What would be understood. */
  readonly example: string
}

const named = (subject: string, unit: string, example: string): Named => ({ subject, unit, example })

const QUANTITIES: Readonly<Record<Exclude<Quantity, 'mass'>, Named>> = {
  tempo: named('Tempo', 'bpm', '128 or 127.6'),
  firstBeat: named('The first beat', 'seconds into the song', '0.25'),
  leadIn: named('The lead-in', 'seconds (below 0 is a crossfade)', '2, or −4 for a crossfade'),
  classLength: named('Class length', 'minutes', '45'),
  speechRate: named('Speaking rate', 'words per minute', '140'),
  cadence: named('Cadence', 'rpm', '80'),
  move: named('A move', 'counts', '8'),
  rounds: named('The number of rounds', '', '4'),
  eights: named('A limit', 'eights', '8'),
  draft: named('The draft', '', '1'),
  stepsPerUnit: named('The number of steps', 'per unit', '4 for quarter turns'),
  power: named('Power', 'watts', '110'),
  age: named('Age', 'years', '37'),
  vo2max: named('VO2 max', 'mL/kg/min', '40'),
  criticalPower: named('Critical power', 'watts', '165'),
  wPrime: named('The reserve', 'kJ', '14'),
  restingHr: named('Resting heart rate', 'bpm', '62'),
  maxHr: named('Max heart rate', 'bpm', '182'),
  firstThresholdHr: named('The first threshold', 'bpm', '132'),
  secondThresholdHr: named('The second threshold', 'bpm', '163'),
  meanPower: named('Average power', 'watts', '260'),
  endPower: named('Power at the end', 'watts', '210'),
  peakSecond: named('The second of the peak', 'seconds', '6'),
}

const namesOf = (of: Quantity): Named =>
  of === 'mass' ? named('Weight', usMeasures ? 'lb' : 'kg', usMeasures ? '154' : '70') : QUANTITIES[of]

const unitOf = (of: Quantity): string => (namesOf(of).unit === '' ? '' : ` ${namesOf(of).unit}`)

/** A sentence for every problem that reading a text can have, by its kind. */
type Sentences = { readonly [Kind in Problem['kind']]: (problem: Omit<Extract<Problem, { kind: Kind }>, 'kind'>) => string }

const sentences: Sentences = {
  notNumber: ({ of }) => `${namesOf(of).subject} must be a number, such as ${namesOf(of).example}.`,
  outside: ({ of, min, max }) => `${namesOf(of).subject} must be between ${number(min)} and ${number(max)}${unitOf(of)}.`,
  notWhole: ({ of }) => `${namesOf(of).subject} must be a whole number.`,
  tooFine: ({ of, decimals }) =>
    `${namesOf(of).subject} can have at most ${decimals === 1 ? 'one decimal place' : `${decimals} decimal places`}.`,

  notClock: () => 'Write minutes and seconds, such as 3:45, or seconds, such as 45.',
  secondsOver: () => 'Seconds after the colon run from 00 to 59.',
  minutesOver: () => 'Minutes after the hours run from 00 to 59.',
  oneFigure: () => 'Write two digits for the seconds after the colon, such as 3:05.',
  notWallClock: () => 'Write the time of day as 6:30 pm or 18:30.',

  notEights: ({ unit }) =>
    unit === 6
      ? 'Write sixes, such as 8, or sixes and counts, such as 8+4, or 36 counts.'
      : 'Write eights, such as 8, or eights and counts, such as 8+4, or 36 counts.',
  partOfCount: ({ below, above, unit }) =>
    `A length is whole counts: the nearest are ${measures.eights(below, unit)} and ${measures.eights(above, unit)}.`,
  noCount: () => 'A length is at least one count.',

  notSetting: ({ unit, example, stepsPerUnit }) => `Write ${measures.unitOf(unit, true)}, such as ${setting(example, stepsPerUnit)}.`,
  noSuchStep: ({ low, high, stepsPerUnit }) =>
    `This bike has no such step: the nearest are ${setting(low, stepsPerUnit)} and ${setting(high, stepsPerUnit)}.`,
  openRange: () => '“Or more” goes with one number, such as 3 or more.',
  highEndFirst: () => 'Write the lower end of the range first.',
}

export const fields = {
  ...sentences,

  tooLong: ({ most, length }: { most: number; length: number }) => `At most ${number(most)} characters; this has ${number(length)}.`,

  /** Under a field with text from before the page ended. */
  back: 'You typed this before the page closed. Press Enter to use it, Escape to drop it.',
}
