import { brakeLawOf, speedFactor } from '#engine/demand/brakeLaw.ts'
import type { Bike, BrakeFit } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'

/** "1.38, give or take 0.06" */
export const sayExponent = ({ exponent, error }: BrakeFit): string => `${formatNumber(exponent, 2)}, give or take ${formatNumber(error, 2)}`

/** What kind of brake a bike has: "friction", or "between friction and magnetic". */
export const sayKind = ({ brake, brakeFit }: Pick<Bike, 'brake' | 'brakeFit'>): string =>
  brakeFit === undefined ? brake : sayFitted(brakeFit)

/** A fitted brake by its kind: one of the two where it lies within twice its error of it. */
export function sayFitted({ exponent, error }: BrakeFit): string {
  const [isFriction, isMagnetic] = [exponent - 1 <= 2 * error, 2 - exponent <= 2 * error]
  if (isFriction === isMagnetic) return 'between friction and magnetic'
  return isFriction ? 'friction' : 'magnetic'
}

/** What twice the cadence does on a bike, and how that is known. */
export function sayCadence(bike: Bike): string {
  const times = speedFactor(brakeLawOf(bike), 2)
  const grows = times === 2 ? 'twice the watts' : times === 4 ? 'four times the watts' : `${formatNumber(times, 1)} times the watts`
  const said = `Twice the cadence, ${grows}.`
  if (bike.brakeFit === undefined) return said
  const kind = sayFitted(bike.brakeFit)
  return `${kind.charAt(0).toUpperCase()}${kind.slice(1)}, fitted from your readings. ${said}`
}
