import type { Seconds } from '#units/units.ts'
import { crossings, type Relaxation, relaxedAt } from './relaxation.ts'

/**
 * Seconds a curve of pieces spends under the first bound, between each two, and from the last one on; every crossing is a
 * moment, not a step.
 *
 * @param bounds rising
 */
export function secondsBetween(pieces: readonly Relaxation[], bounds: readonly number[]): Seconds[] {
  const seconds = Array<number>(bounds.length + 1).fill(0)
  for (const piece of pieces) {
    let from = piece.from
    for (const to of crossingTimes(piece, bounds)) {
      if (to <= from) continue
      seconds[placeOf(relaxedAt(piece, (from + to) / 2), bounds)]! += to - from
      from = to
    }
  }
  return seconds
}

function placeOf(value: number, bounds: readonly number[]): number {
  let i = bounds.length
  while (i > 0 && value < bounds[i - 1]!) i--
  return i
}

function crossingTimes(piece: Relaxation, bounds: readonly number[]): Seconds[] {
  if (piece.follower[1] === 0 && piece.follower[2] === 0) {
    // A constant target is approached without turning: the same place at both ends means no crossing.
    const first = placeOf(piece.follower[0] + piece.difference, bounds)
    const last = placeOf(relaxedAt(piece, piece.to), bounds)
    if (first === last) return [piece.to]
  }
  const times = bounds.flatMap((bound) => crossings(piece, bound))
  return [...times.sort((a, b) => a - b), piece.to]
}
