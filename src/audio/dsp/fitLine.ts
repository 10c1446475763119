import { median } from './median.ts'

/** Seconds of beat n: start + n · period. */
export interface Line {
  period: number
  start: number
}

/** Residuals are never held to be smaller than this; seconds. What frames of ten milliseconds can tell. */
const FINEST = 0.004
/** Tukey's constant for the biweight: 95 % as efficient as least squares on clean data (published). */
const TUKEY = 4.685
const ROUNDS = 12

/**
 * The straight line through (beat number, seconds) by weighted least squares in closed form, with each point weighed
 * anew by Tukey's biweight of its residual until nothing moves (Beaton and Tukey 1974). It starts from the line it is
 * given, so that half of the points may lie anywhere.
 *
 * @param weights how much each point counts before its residual is looked at
 */
export function fitLine(numbers: ArrayLike<number>, seconds: ArrayLike<number>, weights: ArrayLike<number>, from: Line): Line {
  let line = from
  for (let round = 0; round < ROUNDS; round++) {
    const residuals = Array.from(seconds, (second, i) => Math.abs(second - line.start - numbers[i]! * line.period))
    const width = TUKEY * Math.max(FINEST, 1.4826 * median(residuals))
    let w = 0
    let wx = 0
    let wy = 0
    for (let i = 0; i < residuals.length; i++) {
      const own = weightOf(residuals[i]! / width) * weights[i]!
      w += own
      wx += own * numbers[i]!
      wy += own * seconds[i]!
    }
    if (!(w > 0)) return line
    // About the mean: in one pass over raw sums the digits of a long song cancel.
    const mx = wx / w
    const my = wy / w
    let xx = 0
    let xy = 0
    for (let i = 0; i < residuals.length; i++) {
      const own = weightOf(residuals[i]! / width) * weights[i]!
      xx += own * (numbers[i]! - mx) ** 2
      xy += own * (numbers[i]! - mx) * (seconds[i]! - my)
    }
    if (!(xx > 0)) return line
    const period = xy / xx
    const next = { period, start: my - mx * period }
    const moved = Math.abs(next.period - line.period) / line.period + Math.abs(next.start - line.start)
    line = next
    if (moved < 1e-9) break
  }
  return line
}

const weightOf = (u: number): number => (u < 1 ? (1 - u * u) ** 2 : 0)
