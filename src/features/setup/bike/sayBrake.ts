import { brakeLawOf, speedFactor } from '#engine/demand/brakeLaw.ts'
import type { Bike, BrakeFit } from '#plan/model.ts'
import { words } from '#words/words.ts'

type Kind = Bike['brake'] | 'between'

/** What kind of brake a bike has. */
export const kindOf = ({ brake, brakeFit }: Pick<Bike, 'brake' | 'brakeFit'>): Kind =>
  brakeFit === undefined ? brake : fittedKind(brakeFit)

/** A fitted brake by its kind: one of the two where it lies within twice its error of it. */
export function fittedKind({ exponent, error }: BrakeFit): Kind {
  const [isFriction, isMagnetic] = [exponent - 1 <= 2 * error, 2 - exponent <= 2 * error]
  if (isFriction === isMagnetic) return 'between'
  return isFriction ? 'friction' : 'magnetic'
}

/** What twice the cadence does on a bike, and how that is known. */
export const sayCadence = (bike: Bike): string =>
  words.setup.cadenceTwice({ times: speedFactor(brakeLawOf(bike), 2), fitted: bike.brakeFit ? fittedKind(bike.brakeFit) : null })
