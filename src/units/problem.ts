import type { Counts, KnobSteps } from '#units/units.ts'

/** The quantities that are typed as one number and named where it is no good. Their words stand in the catalogue. */
export type Quantity =
  | 'tempo'
  | 'firstBeat'
  | 'leadIn'
  | 'classLength'
  | 'speechRate'
  | 'cadence'
  | 'move'
  | 'rounds'
  | 'eights'
  | 'draft'
  | 'stepsPerUnit'
  | 'power'
  | 'mass'
  | 'age'
  | 'vo2max'
  | 'criticalPower'
  | 'wPrime'
  | 'restingHr'
  | 'maxHr'
  | 'firstThresholdHr'
  | 'secondThresholdHr'
  | 'meanPower'
  | 'endPower'
  | 'peakSecond'

/**
 * What is wrong with a typed text, as plain data: the sentence is made where it is shown, in the
 * language of the page. Every kind has its sentence in the catalogue area `fields`.
 */
export type Problem =
  | { kind: 'notNumber'; of: Quantity }
  | { kind: 'outside'; of: Quantity; min: number; max: number }
  | { kind: 'notWhole'; of: Quantity }
  | { kind: 'tooFine'; of: Quantity; decimals: number }
  | { kind: 'notClock' }
  | { kind: 'secondsOver' }
  | { kind: 'minutesOver' }
  | { kind: 'oneFigure' }
  | { kind: 'notWallClock' }
  | { kind: 'notEights'; unit: Counts }
  | { kind: 'partOfCount'; below: Counts; above: Counts; unit: Counts }
  | { kind: 'noCount' }
  | { kind: 'notSetting'; unit: string; example: KnobSteps; stepsPerUnit: number }
  | { kind: 'noSuchStep'; low: KnobSteps; high: KnobSteps; stepsPerUnit: number }
  | { kind: 'openRange' }
  | { kind: 'highEndFirst' }
