import type { ThreeMinuteTest } from '#plan/riderModel.ts'
import type { Seconds } from '#units/units.ts'
import { type Capacity, isUnusual, type TestResult } from './capacity.ts'

/** What speaks against the test, though it gives a result. */
export type ThreeMinuteDoubt =
  /** Power was highest late in the test, or hardly fell: it was paced. */
  { kind: 'latePeak'; peakSecond: Seconds } | { kind: 'paced'; share: number } | { kind: 'unusual'; wPrime: number }

/** `notFalling`: the end is as high as the mean. */
export type ThreeMinuteRefusal = 'notFalling'

/** All-out power peaks in the first seconds; common practice. */
const LATEST_PEAK: Seconds = 15
/** An end at more than this share of the mean is no all-out test; common practice. */
const PACED = 0.95

/** Typical errors of one test against the next. Source: Johnson TM et al., Med Sci Sports Exerc 2011;43(12): 15 W (7 %) and 2,864 J (28 %). */
const ERROR: Capacity['error'] = { criticalPower: 15, wPrime: 2_864 }

/**
 * Critical power and W′ from three minutes all out, from the first second and without pacing: W′ is spent by then, so
 * critical power is the mean power of the last thirty seconds, and W′ the work done above it.
 *
 * Source: Vanhatalo A, Doust JH, Burnley M, Med Sci Sports Exerc 2007;39(3):548-555. It may give too high a critical
 * power (review: Muniz-Pumares D et al., J Strength Cond Res 2019;33(2):584-596).
 */
export function capacityFromThreeMinutes(test: ThreeMinuteTest): TestResult<ThreeMinuteDoubt, ThreeMinuteRefusal> {
  const { over, watts, endWatts, peakSecond } = test
  if (endWatts >= watts) return { ok: false, reason: 'notFalling' }
  const wPrime = (watts - endWatts) * over
  const doubts: ThreeMinuteDoubt[] = [
    ...(peakSecond !== undefined && peakSecond > LATEST_PEAK ? [{ kind: 'latePeak', peakSecond } as const] : []),
    ...(endWatts > PACED * watts ? [{ kind: 'paced', share: endWatts / watts } as const] : []),
    ...(isUnusual({ wPrime }) ? [{ kind: 'unusual', wPrime } as const] : []),
  ]
  return { ok: true, capacity: { criticalPower: endWatts, wPrime, error: ERROR }, doubts }
}
