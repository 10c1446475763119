import type { Section } from '#plan/model.ts'
import { countsOf } from '#plan/songs/beatGrid.ts'
import type { Counts } from '#units/units.ts'

/** The stretch of a song that is ridden, in counts of the song; `total` is never negative. */
export interface RiddenCounts {
  in: Counts
  out: Counts
  total: Counts
}

/**
 * From the in-point (the first beat unless given) to the out-point (unless given, the end of
 * the last whole eight the song still holds). Undefined where the section has no song or its
 * song no grid.
 */
export function riddenCounts(section: Section): RiddenCounts | undefined {
  const total = countsOf(section)
  if (total === null) return undefined
  const from = section.inCount ?? 0
  return { in: from, out: section.outCount ?? from + total, total }
}
