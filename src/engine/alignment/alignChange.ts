import type { Alignment, AlignmentGrade } from '#engine/played.ts'
import type { CountingUnit } from '#engine/timeline/countingUnit.ts'
import type { BeatGrid } from '#plan/model.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import type { Counts } from '#units/units.ts'

/** How far a beat may be missed and still be met: mir_eval's window for beat tracking, 70 ms (Raffel et al., ISMIR 2014). */
const BEAT_TOLERANCE_MS = 70

/**
 * How a change at a count of the song sits on the music: its distance from the nearest count,
 * eight and phrase (positive when late), and the strongest of them it meets.
 */
export function alignChange(grid: BeatGrid, count: Counts, unit: CountingUnit): Alignment {
  const fromCount = distance(grid, count, 1)
  const fromEight = distance(grid, count, unit.eight)
  const fromPhrase = distance(grid, count, unit.phrase)
  return { grade: gradeOf(fromCount, fromEight, fromPhrase), fromCount, fromEight, fromPhrase }
}

type Distance = Alignment['fromCount']

function distance(grid: BeatGrid, count: Counts, step: Counts): Distance {
  const nearest = Math.round(count / step) * step
  if (nearest === count) return { counts: 0, milliseconds: 0 }
  return { counts: count - nearest, milliseconds: (secondAt(grid, count) - secondAt(grid, nearest)) * 1000 }
}

function gradeOf(fromCount: Distance, fromEight: Distance, fromPhrase: Distance): AlignmentGrade {
  const met = (from: Distance): boolean => Math.abs(from.milliseconds) <= BEAT_TOLERANCE_MS
  if (met(fromPhrase)) return 'phrase'
  if (met(fromEight)) return 'eight'
  return met(fromCount) ? 'count' : 'off'
}
