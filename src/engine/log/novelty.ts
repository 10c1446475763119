import type { ClassPattern } from './pattern.ts'

/** How much each of the things riders would know again counts. Common practice, no source. */
const WEIGHTS = { songs: 0.5, moves: 0.3, arc: 0.2 } as const
/** How much less each class further back counts. Common practice, no source. */
const FADING = 0.7

/** What a class shares with one before it, each from 0 to 1. */
interface Shared {
  songs: number
  moves: number
  arc: number
}

/**
 * How new a class is to those who rode the last ones: 1 − Σ λʲ·shared ÷ Σ λʲ over the classes
 * before it, the last one first, λ = 0.7. Shared is half the share of its songs, three tenths of
 * the share of its runs of moves, and two tenths of the correlation of the two efforts over the
 * class where that is above nought. A measure of our own; common practice, no source.
 *
 * @param before newest first
 * @returns 0 for a repeat, 1 for a class nobody could know; null without any class before
 */
export function novelty(pattern: ClassPattern, before: readonly ClassPattern[]): number | null {
  if (before.length === 0) return null
  let [sum, whole] = [0, 0]
  for (const [j, other] of before.entries()) {
    const fade = FADING ** j
    sum += fade * sharedWith(pattern, other).total
    whole += fade
  }
  return 1 - sum / whole
}

function sharedWith(pattern: ClassPattern, other: ClassPattern): Shared & { total: number } {
  const songs = shareOf(pattern.songs, other.songs)
  const moves = shareOf(pattern.moves, other.moves)
  const arc = Math.max(0, correlation(pattern.arc, other.arc))
  return { songs, moves, arc, total: WEIGHTS.songs * songs + WEIGHTS.moves * moves + WEIGHTS.arc * arc }
}

/** The share of one set that the other has too; nothing of nothing. */
function shareOf(own: ReadonlySet<string>, other: ReadonlySet<string>): number {
  if (own.size === 0) return 0
  return [...own].filter((one) => other.has(one)).length / own.size
}

/** Pearson's; 0 where either does not vary. */
function correlation(a: readonly number[], b: readonly number[]): number {
  if (a.length === 0 || a.length !== b.length) return 0
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
  const [meanA, meanB] = [mean(a), mean(b)]
  let [both, ownA, ownB] = [0, 0, 0]
  for (const [i, value] of a.entries()) {
    const [x, y] = [value - meanA, b[i]! - meanB]
    both += x * y
    ownA += x * x
    ownB += y * y
  }
  return ownA > 0 && ownB > 0 ? both / Math.sqrt(ownA * ownB) : 0
}
