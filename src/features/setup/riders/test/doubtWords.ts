import type { ThreeMinuteDoubt, ThreeMinuteRefusal } from '#engine/riderTest/capacityFromThreeMinutes.ts'
import type { TrialDoubt, TrialRefusal } from '#engine/riderTest/capacityFromTrials.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'

const TRIAL_REFUSALS: Record<TrialRefusal, string> = {
  tooFew: 'Two trials of different lengths are the least.',
  sameLength: 'The trials are all of one length: critical power takes two lengths well apart.',
  notFalling:
    'These trials do not fall as all-out ones do: a longer one has too many or too few watts for the shorter. One was not all out, or was mistyped.',
}
export const sayTrialRefusal = (reason: TrialRefusal): string => TRIAL_REFUSALS[reason]

const THREE_MINUTE_REFUSALS: Record<ThreeMinuteRefusal, string> = {
  notFalling: 'The last 30 seconds are no lower than the mean: the test was paced, or a number was mistyped.',
}
export const sayThreeMinuteRefusal = (reason: ThreeMinuteRefusal): string => THREE_MINUTE_REFUSALS[reason]

const sayUnusual = (wPrime: number): string => `A reserve of ${kJ(wPrime)} kJ is rare; most people have 5 to 35. Look at the trials again.`

/** What speaks against trials, in a sentence each. */
export function sayTrialDoubt(doubt: TrialDoubt): string {
  switch (doubt.kind) {
    case 'short':
      return `The trial of ${formatClock(doubt.trial.seconds)} is shorter than 2 minutes, where the model does not hold.`
    case 'long':
      return `The trial of ${formatClock(doubt.trial.seconds)} is longer than 15 minutes, where the model no longer holds well.`
    case 'allShort':
      return `The longest trial is ${formatClock(doubt.longest)}: with none of 10 minutes or more, critical power comes out too high. Add one of 12 to 15.`
    case 'alike':
      return `The trials are too much alike, ${formatClock(doubt.shortest)} to ${formatClock(doubt.longest)}: a small slip in one moves the result a lot. The longest should be at least twice the shortest.`
    case 'apart':
      return `These trials do not agree: critical power comes to ${watts(doubt.byWork)} or ${watts(doubt.byPower)} watts, by how one draws the line (r² ${formatNumber(doubt.explained, 3)}). Ride the odd one again.`
    case 'onlyTwo':
      return 'Two trials always fit. A third of another length tells how sure this is.'
    case 'unusual':
      return sayUnusual(doubt.wPrime)
  }
}

/** The same of three minutes all out. */
export function sayThreeMinuteDoubt(doubt: ThreeMinuteDoubt): string {
  switch (doubt.kind) {
    case 'latePeak':
      return `Power peaked at ${formatNumber(doubt.peakSecond)} s: an all-out start peaks in the first seconds. Paced, the test reads critical power too high.`
    case 'paced':
      return `The end is ${formatNumber(100 * doubt.share, 0)} % of the mean: the test was hardly all out, and critical power reads too high.`
    case 'unusual':
      return sayUnusual(doubt.wPrime)
  }
}

export const watts = (value: number): string => formatNumber(value, 0)
export const kJ = (joules: number): string => formatNumber(joules / 1000, 1)
