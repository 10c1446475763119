import type { Quadratic } from '#engine/demand/quadratic.ts'
import type { Seconds } from '#units/units.ts'

/**
 * First-order approach to a moving target: dv/dt = (target(t) − v) ÷ tau, in closed form.
 *
 * For a target a + b·t + c·t² the solution is the target's own follower
 * p(t) = (a − b·tau + 2c·tau²) + (b − 2c·tau)·t + c·t² and a difference that fades as
 * e^(−t/tau). Nothing is stepped.
 */
export interface Relaxation {
  from: Seconds
  to: Seconds
  /** The follower p, time counted from `from`. */
  follower: Quadratic
  /** v − p at `from`. */
  difference: number
  tau: Seconds
}

/** The approach from a value `start` at `from`. */
export function relaxTowards(target: Quadratic, start: number, from: Seconds, to: Seconds, tau: Seconds): Relaxation {
  const a = target[0]
  const b = target[1]
  const c = target[2]
  const follower: Quadratic = [a - b * tau + 2 * c * tau * tau, b - 2 * c * tau, c]
  return { from, to, follower, difference: start - follower[0], tau }
}

/** The value at a moment of the piece. */
export function relaxedAt({ from, follower, difference, tau }: Relaxation, at: Seconds): number {
  const t = at - from
  return follower[0] + t * (follower[1] + t * follower[2]) + difference * Math.exp(-t / tau)
}

/** The area under the piece, from its start to its end. */
export function relaxedArea({ from, to, follower, difference, tau }: Relaxation): number {
  const t = to - from
  return t * (follower[0] + t * (follower[1] / 2 + (t * follower[2]) / 3)) - difference * tau * Math.expm1(-t / tau)
}

/**
 * Moments strictly inside the piece at which the value turns, rising first. A piece with a
 * constant target has none; one with a ramp at most one, in closed form; with a curved target
 * the slope is monotone between at most two turning points of its own and is bisected there.
 */
export function turningPoints({ from, to, follower, difference, tau }: Relaxation): Seconds[] {
  const [, b, c] = follower
  const length = to - from
  if (difference === 0 || (b === 0 && c === 0)) return []
  const slope = (t: number) => b + 2 * c * t - (difference / tau) * Math.exp(-t / tau)
  if (c === 0) {
    const ratio = (b * tau) / difference
    const t = ratio > 0 ? -tau * Math.log(ratio) : -1
    return t > 0 && t < length ? [from + t] : []
  }
  const bend = (-2 * c * tau * tau) / difference
  const turn = bend > 0 ? -tau * Math.log(bend) : -1
  const ends = turn > 0 && turn < length ? [0, turn, length] : [0, length]
  return ends.slice(1).flatMap((end, i) => {
    const start = ends[i]!
    return slope(start) * slope(end) < 0 ? [from + bisect(slope, start, end)] : []
  })
}

/** The zero of a monotone function between two times at which its signs differ, to the last binary digit. */
export function bisect(f: (t: number) => number, low: number, high: number): number {
  const rising = f(high) > 0
  let [a, b] = [low, high]
  for (;;) {
    const middle = a + (b - a) / 2
    if (middle <= a || middle >= b) return middle
    if (f(middle) > 0 === rising) b = middle
    else a = middle
  }
}

/**
 * Moments at which the value crosses a level, rising in time. Closed form while the target is
 * constant; between turning points the value is monotone and is bisected.
 */
export function crossings(piece: Relaxation, level: number): Seconds[] {
  const { from, to, follower, difference, tau } = piece
  if (follower[1] === 0 && follower[2] === 0) {
    const ratio = (level - follower[0]) / difference
    const t = ratio > 0 ? -tau * Math.log(ratio) : -1
    return t > 0 && t < to - from ? [from + t] : []
  }
  const ends = [from, ...turningPoints(piece), to]
  const above = (at: number) => relaxedAt(piece, at) - level
  return ends.slice(1).flatMap((end, i) => {
    const start = ends[i]!
    return above(start) * above(end) < 0 ? [bisect(above, start, end)] : []
  })
}
