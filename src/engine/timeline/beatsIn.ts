import type { Section } from '#plan/model.ts'
import { beatOf } from '#plan/songs/beatGrid.ts'
import type { Counts } from '#units/units.ts'

/** Beats of a stretch of counts of a section: as many as counts, and those over or less those missing in it. */
export function beatsIn({ song, inCount = 0 }: Section, from: Counts, to: Counts): number {
  const grid = song?.grid
  return grid?.odd === undefined ? to - from : beatOf(grid, inCount + to) - beatOf(grid, inCount + from)
}
