import type { Bike } from '#plan/model.ts'
import type { Rpm } from '#units/units.ts'
import type { Quadratic } from './quadratic.ts'

/**
 * How a brake answers to cadence: the share of its drag, 0 to 1, that grows with speed.
 *
 * Drag is a mix of rubbing, which is the same at every speed, and of eddy currents, which grow in
 * proportion to it well below a disc's critical speed; power is torque × angular velocity. So at
 * s times the reference cadence power is (1 − share) · s + share · s² times what it is there: a
 * friction brake's law at share 0, a magnetic one's at 1. The slope of its logarithm at the
 * reference cadence, the n of "power ∝ cadenceⁿ", is 1 + share. A cadence that ramps keeps power a
 * quadratic in time, whatever the share, which a power law with n between would not.
 */
export type BrakeLaw = number

/** The law a bike was fitted with, else that of its kind of brake. */
export const brakeLawOf = ({ brake, brakeFit }: Pick<Bike, 'brake' | 'brakeFit'>): BrakeLaw =>
  brakeFit === undefined ? (brake === 'friction' ? 0 : 1) : brakeFit.exponent - 1

/** How many times the power at the reference cadence, at `speed` times that cadence. */
export const speedFactor = (law: BrakeLaw, speed: number): number => (1 - law) * speed + law * speed * speed

/** The same while speed goes in a straight line. */
export const speedFactorAlong = (law: BrakeLaw, start: number, slope: number): Quadratic => [
  speedFactor(law, start),
  (1 - law) * slope + 2 * law * start * slope,
  law * slope * slope,
]

/**
 * The law told from another reference cadence: the same brake, whose eddy currents are a larger
 * share of the drag the faster it turns.
 */
export function brakeLawFrom(law: BrakeLaw, from: Rpm, to: Rpm): BrakeLaw {
  const speed = to / from
  return (law * speed) / (1 - law + law * speed)
}
