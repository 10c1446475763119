import type { BrakeFit } from '#plan/model.ts'
import type { Rpm } from '#units/units.ts'
import { brakeLawFrom } from './brakeLaw.ts'

/** A fitted brake told from another reference cadence, to thousandths. */
export function brakeFitFrom({ exponent, error }: BrakeFit, from: Rpm, to: Rpm): BrakeFit {
  const law = exponent - 1
  const speed = to / from
  const steepness = speed / (1 - law + law * speed) ** 2
  return roundedFit({ exponent: 1 + brakeLawFrom(law, from, to), error: error * steepness })
}

/** As it is kept: to thousandths, inside the two laws. */
export const roundedFit = ({ exponent, error }: BrakeFit): BrakeFit => ({
  exponent: Math.round(1000 * Math.min(2, Math.max(1, exponent))) / 1000,
  error: Math.round(1000 * Math.min(1, error)) / 1000,
})
