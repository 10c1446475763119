import { harmonicSlopes } from './harmonicSlopes.ts'

/** A cubic through points of rising x, held flat beyond the outer two. */
export interface MonotoneCubic {
  x: readonly number[]
  y: readonly number[]
  /** Slope at every point. */
  slope: readonly number[]
}

/**
 * Joins points by a cubic that rises only where they rise and never leaves the range of the
 * two it joins, unlike a plain cubic spline.
 *
 * @param points at least one, by strictly rising x
 */
export function monotoneCubic(points: readonly (readonly [x: number, y: number])[]): MonotoneCubic {
  if (points.length === 0) throw new Error('A curve needs at least one point.')
  const x = points.map((point) => point[0])
  const y = points.map((point) => point[1])
  if (points.length === 1) return { x, y, slope: [0] }
  const widths = x.slice(1).map((right, i) => right - x[i]!)
  if (widths.some((width) => !(width > 0))) throw new Error('The points of a curve stand by rising x.')
  const secants = widths.map((width, i) => (y[i + 1]! - y[i]!) / width)
  return { x, y, slope: harmonicSlopes(widths, secants) }
}

/** The curve's value; beyond the outer points the nearest of them. */
export function cubicAt({ x, y, slope }: MonotoneCubic, at: number): number {
  const last = x.length - 1
  if (at <= x[0]!) return y[0]!
  if (at >= x[last]!) return y[last]!
  let i = 0
  while (at >= x[i + 1]!) i++
  const h = x[i + 1]! - x[i]!
  const t = (at - x[i]!) / h
  const u = 1 - t
  return u * u * ((1 + 2 * t) * y[i]! + t * h * slope[i]!) + t * t * ((3 - 2 * t) * y[i + 1]! - u * h * slope[i + 1]!)
}
