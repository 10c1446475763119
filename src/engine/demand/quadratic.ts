/**
 * A quantity over one piece of time: a + b·t + c·t², t in seconds from the piece's start.
 * Cadence ramps are straight, so power is linear in time on a friction brake and quadratic
 * on a magnetic one or between the two, and everything linear in power follows.
 */
export type Quadratic = readonly [a: number, b: number, c: number]

export const constant = (value: number): Quadratic => [value, 0, 0]

// Read by index: taking an array apart by pattern costs several times as much, and this is where the time goes.

export const quadraticAt = (q: Quadratic, t: number): number => q[0] + t * (q[1] + t * q[2])

/** The area under it from 0 to t. */
export const areaUnder = (q: Quadratic, t: number): number => t * (q[0] + t * (q[1] / 2 + (t * q[2]) / 3))

/** shift + scale × q. */
export const scaled = (q: Quadratic, scale: number, shift = 0): Quadratic => [shift + scale * q[0], scale * q[1], scale * q[2]]

/** The same curve with its time counted from a later start. */
export const startingAt = (q: Quadratic, t: number): Quadratic => (t === 0 ? q : [quadraticAt(q, t), q[1] + 2 * q[2] * t, q[2]])

export const isConstant = (q: Quadratic): boolean => q[1] === 0 && q[2] === 0

const NONE: readonly number[] = []

/** The times strictly inside (0, length) at which the curve meets a level, rising. */
function timesAt([a, b, c]: Quadratic, level: number, length: number): readonly number[] {
  if (b === 0 && c === 0) return NONE
  const d = a - level
  if (c === 0) return inside([-d / b], length)
  const square = b * b - 4 * c * d
  if (square < 0) return NONE
  // The root of larger size first, the other from their product: no digits cancel.
  const q = -0.5 * (b + Math.sign(b || 1) * Math.sqrt(square))
  const roots = q === 0 ? [0] : [q / c, d / q]
  return inside(roots[0]! <= roots[1]! ? roots : roots.reverse(), length)
}

const inside = (times: number[], length: number): number[] => times.filter((t, i) => t > 0 && t < length && t !== times[i - 1])

/** The times at which the curve meets any of the levels, rising, with 0 in front and the length at the end. */
export function cutAt(q: Quadratic, levels: readonly number[], length: number): number[] {
  if (isConstant(q)) return [0, length]
  const inner = levels.flatMap((level) => timesAt(q, level, length)).sort((x, y) => x - y)
  return [0, ...inner.filter((t, i) => t !== inner[i - 1]), length]
}
