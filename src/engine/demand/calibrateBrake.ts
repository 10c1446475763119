import type { Bike, BrakeFit } from '#plan/model.ts'
import type { Rpm } from '#units/units.ts'
import { brakeFitFrom, roundedFit } from './brakeFitFrom.ts'
import { cubicAt, monotoneCubic } from './monotoneCubic.ts'
import { type Reading, risingPoints } from './risingPoints.ts'

/** Settings and the power each took, all at one cadence. */
export interface Round {
  rpm: Rpm
  readings: readonly Reading[]
}

/** What readings at two cadences say of a brake. */
export interface BrakeGuess {
  /** The nearer of the two kinds; null where the readings do not decide it. */
  brake: Bike['brake'] | null
  /** How the brake answers, for the bike to keep; null where readings are too few or too far apart to say. */
  fit: BrakeFit | null
  /** n in power ∝ cadenceⁿ between the two cadences, the mean of all comparisons, also where no brake has it; null without a comparison. */
  exponent: number | null
  /** Settings compared. */
  comparisons: number
}

/** Half-way between the two laws, and how far from it the exponent has to lie at least. */
const BETWEEN = 1.5
const MARGIN = 0.15

/** Comparisons are taken to scatter by 0.15, as two of them would show, until more of them say otherwise; our own rule. */
const USUAL_SPREAD = 0.15
const USUAL_WEIGHT = 2

/** The largest standard error at which an exponent is kept: four of them are the whole way between the laws; our own rule. */
const LARGEST_ERROR = 0.25

/**
 * Finds how a brake answers to cadence by what the same setting took at two cadences. Each round
 * gives a curve of power over setting; every setting of one that lies on the other's curve gives
 * one exponent, ln(power ratio) ÷ ln(cadence ratio). Their mean is the exponent between the two
 * cadences, and the mix of rubbing and eddy drag that has it there ({@link brakeLawOf}) gives the
 * exponent at the reference cadence, which is what the bike keeps. The kind of brake is decided
 * where the mean is further from 1½ than 0.15 and than twice its standard error (our own rule; the
 * two laws themselves: power is torque × angular velocity, with torque constant on a belt and in
 * proportion to speed on an eddy-current disc well below its critical speed).
 */
export function guessBrake(one: Round, other: Round, referenceRpm: Rpm): BrakeGuess {
  const exponents = one.rpm === other.rpm ? [] : exponentsOf(one, other)
  const n = exponents.length
  if (n === 0) return { brake: null, fit: null, exponent: null, comparisons: 0 }
  const exponent = exponents.reduce((sum, each) => sum + each, 0) / n
  const squares = exponents.reduce((sum, each) => sum + (each - exponent) ** 2, USUAL_WEIGHT * USUAL_SPREAD ** 2)
  const error = Math.sqrt(squares / (USUAL_WEIGHT + n - 1) / n)
  const isDecided = n >= 2 && Math.abs(exponent - BETWEEN) > Math.max(MARGIN, 2 * error)
  const isKept = n >= 2 && error <= LARGEST_ERROR
  return {
    brake: isDecided ? kindOf(exponent) : null,
    fit: isKept ? fitBetween(exponent, error, one.rpm, other.rpm, referenceRpm) : null,
    exponent,
    comparisons: n,
  }
}

export const kindOf = (exponent: number): Bike['brake'] => (exponent < BETWEEN ? 'friction' : 'magnetic')

/**
 * The mix whose power grows between two cadences as a power of them does, told from the reference
 * cadence. With s the ratio of the cadences and q = s^(n − 1), the eddy share at the lower one is
 * (q − 1) ÷ (s − 1).
 */
function fitBetween(exponent: number, error: number, a: Rpm, b: Rpm, referenceRpm: Rpm): BrakeFit {
  const slow = Math.min(a, b)
  const speed = Math.max(a, b) / slow
  const held = Math.min(2, Math.max(1, exponent))
  const share = (n: number) => (speed ** (n - 1) - 1) / (speed - 1)
  const steepness = (Math.log(speed) * speed ** (held - 1)) / (speed - 1)
  return roundedFit(brakeFitFrom({ exponent: 1 + share(held), error: error * steepness }, slow, referenceRpm))
}

/** One exponent for every setting of either round that lies on the other's curve; a setting of both is one. */
function exponentsOf(one: Round, other: Round): number[] {
  const known = new Set(other.readings.map(({ setting }) => setting))
  const apart = { ...one, readings: one.readings.filter(({ setting }) => !known.has(setting)) }
  return [...exponentsOn(one, other), ...exponentsOn(other, apart)]
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
