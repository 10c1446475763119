import type { ThreeMinuteDoubt, ThreeMinuteRefusal } from '#engine/riderTest/capacityFromThreeMinutes.ts'
import type { TrialDoubt, TrialRefusal } from '#engine/riderTest/capacityFromTrials.ts'
import { words } from '#words/words.ts'

/** Why trials give nothing, in a sentence. */
export const sayTrialRefusal = (reason: TrialRefusal): string => words.riders[reason]

/** The same of three minutes all out. */
export const sayThreeMinuteRefusal = (_: ThreeMinuteRefusal): string => words.riders.notFallingThree

/** What speaks against trials, in a sentence each. */
export function sayTrialDoubt(doubt: TrialDoubt): string {
  switch (doubt.kind) {
    case 'short':
      return words.riders.trialShort(doubt.trial)
    case 'long':
      return words.riders.trialLong(doubt.trial)
    case 'allShort':
      return words.riders.allShort(doubt)
    case 'alike':
      return words.riders.alike(doubt)
    case 'apart':
      return words.riders.apart(doubt)
    case 'onlyTwo':
      return words.riders.onlyTwo
    case 'unusual':
      return words.riders.unusual(doubt)
  }
}

/** The same of three minutes all out. */
export function sayThreeMinuteDoubt(doubt: ThreeMinuteDoubt): string {
  switch (doubt.kind) {
    case 'latePeak':
      return words.riders.latePeak(doubt)
    case 'paced':
      return words.riders.paced(doubt)
    case 'unusual':
      return words.riders.unusual(doubt)
  }
}
