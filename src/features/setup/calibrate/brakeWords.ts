import type { BrakeGuess } from '#engine/demand/calibrateBrake.ts'
import type { Bike } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'

/** What two cadences say about the brake, in a sentence. */
export function brakeWords({ brake, exponent, comparisons }: BrakeGuess, before: Bike['brake']): string {
  if (exponent === null) return `The brake stays ${before}: it takes the same settings at two cadences to tell.`
  const shown = `power grew with cadence to the power ${formatNumber(exponent, 1)}, where friction is 1 and magnetic 2`
  if (brake === null) {
    return comparisons < 2
      ? `The brake stays ${before}: one setting common to both cadences is too few to tell.`
      : `The brake stays ${before}: your answers do not decide it (${shown}).`
  }
  return `Your answers fit a ${brake} brake (${shown}).`
}
