import type { Bike } from '#plan/model.ts'
import type { Rpm } from '#units/units.ts'
import { cubicAt, monotoneCubic } from './monotoneCubic.ts'
import { type Reading, risingPoints } from './risingPoints.ts'

/** Settings and the power each took, all at one cadence. */
export interface Round {
  rpm: Rpm
  readings: readonly Reading[]
}

/** Which brake fits readings at two cadences. */
export interface BrakeGuess {
  /** Null where the readings do not decide it. */
  brake: Bike['brake'] | null
  /** n in power ∝ cadenceⁿ, the mean of all comparisons: 1 on a friction brake, 2 on a magnetic one; null without a comparison. */
  exponent: number | null
  /** Readings whose setting lies among those of the other round. */
  comparisons: number
}

/** Half-way between the two laws, and how far from it the exponent has to lie at least. */
const BETWEEN = 1.5
const MARGIN = 0.15

/**
 * Tells the brake by what the same setting took at two cadences. Each round gives a curve of
 * power over setting; every reading of the other round that lies on it gives one exponent,
 * ln(power ratio) ÷ ln(cadence ratio). Their mean decides where it is further from 1½ than
 * 0.15 and than twice its standard error (our own rule; the two laws themselves: power is
 * torque × angular velocity, with torque constant on a belt and in proportion to speed on an
 * eddy-current disc well below its critical speed).
 */
export function guessBrake(one: Round, other: Round): BrakeGuess {
  const exponents = one.rpm === other.rpm ? [] : [...exponentsOn(one, other), ...exponentsOn(other, one)]
  const n = exponents.length
  if (n === 0) return { brake: null, exponent: null, comparisons: 0 }
  const exponent = exponents.reduce((sum, each) => sum + each, 0) / n
  const spread = Math.sqrt(exponents.reduce((sum, each) => sum + (each - exponent) ** 2, 0) / Math.max(1, n - 1))
  const isDecided = n >= 2 && Math.abs(exponent - BETWEEN) > Math.max(MARGIN, (2 * spread) / Math.sqrt(n))
  return { brake: isDecided ? (exponent < BETWEEN ? 'friction' : 'magnetic') : null, exponent, comparisons: n }
}

/** One exponent for every reading of `others` whose setting lies on the curve through `base`. */
function exponentsOn(base: Round, others: Round): number[] {
  const points = risingPoints(base.readings.filter(({ watts }) => watts > 0))
  if (points.length < 2) return []
  const curve = monotoneCubic(points)
  const [low, high] = [points[0]![0], points.at(-1)![0]]
  const speed = Math.log(others.rpm / base.rpm)
  return others.readings
    .filter(({ setting, watts }) => watts > 0 && setting >= low && setting <= high)
    .map(({ setting, watts }) => Math.log(watts / cubicAt(curve, setting)) / speed)
}
