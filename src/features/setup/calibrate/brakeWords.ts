import type { BrakeGuess } from '#engine/demand/calibrateBrake.ts'
import { sayExponent, sayFitted, sayKind } from '#features/setup/bike/sayBrake.ts'
import type { Bike } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'

/** How far an exponent may lie outside the two laws and still be a brake read a little wrong. */
const SLACK = 0.15

/** What two cadences say about the brake, in a sentence or two. */
export function brakeWords({ brake, fit, exponent, comparisons }: BrakeGuess, before: Pick<Bike, 'brake' | 'brakeFit'>): string {
  const stays = `The brake stays ${before.brakeFit ? `as it was fitted, ${sayKind(before)}` : before.brake}`
  if (exponent === null) return `${stays}: it takes the same settings at two cadences to tell.`
  const shown = `power grew with cadence to the power ${formatNumber(exponent, 1)}, where friction is 1 and magnetic 2`
  if (comparisons < 2) return `${stays}: one setting common to both cadences is too few to tell.`
  if (fit === null && brake === null) return `${stays}: your answers do not decide it (${shown}).`
  const outside =
    exponent < 1 - SLACK || exponent > 2 + SLACK ? ` No brake has ${formatNumber(exponent, 1)}: read both cadences again.` : ''
  if (fit === null) return `Your answers fit a ${brake} brake (${shown}).${outside}`
  const kind = sayFitted(fit)
  if (kind === 'friction' || kind === 'magnetic') return `Your answers fit a ${kind} brake (${shown}).${outside}`
  return `Brake: between friction and magnetic, fitted from your answers. Watts grow with cadence to the ${sayExponent(fit)}, where friction is 1 and magnetic 2.`
}
