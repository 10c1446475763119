import type { Seconds } from '#units/units.ts'
import { INTENSITY_CLASSES, type IntensityClass } from './intensityClass.ts'
import { crossings, type Relaxation, relaxedAt } from './relaxation.ts'

/** Lower bounds of the classes as shares of the heart-rate reserve. */
const BOUNDS = INTENSITY_CLASSES.map((row) => row.hrr / 100)

/** Seconds the predicted heart rate spends in each class of intensity; every crossing is a moment, not a step. */
export function secondsByClass(pieces: readonly Relaxation[]): Record<IntensityClass, Seconds> {
  const seconds = BOUNDS.map(() => 0)
  for (const piece of pieces) {
    let from = piece.from
    for (const to of crossingTimes(piece)) {
      if (to <= from) continue
      seconds[classAt(relaxedAt(piece, (from + to) / 2))]! += to - from
      from = to
    }
  }
  return Object.fromEntries(INTENSITY_CLASSES.map((row, i) => [row.name, seconds[i]!])) as Record<IntensityClass, Seconds>
}

function classAt(share: number): number {
  let i = BOUNDS.length - 1
  while (i > 0 && share < BOUNDS[i]!) i--
  return i
}

function crossingTimes(piece: Relaxation): Seconds[] {
  if (piece.follower[1] === 0 && piece.follower[2] === 0) {
    // A constant target is approached without turning: equal classes at both ends mean no crossing.
    const first = classAt(piece.follower[0] + piece.difference)
    const last = classAt(relaxedAt(piece, piece.to))
    if (first === last) return [piece.to]
  }
  const times = BOUNDS.slice(1).flatMap((bound) => crossings(piece, bound))
  return [...times.sort((a, b) => a - b), piece.to]
}
