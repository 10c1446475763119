import { ASSUMED_TEMPO } from '#engine/timeline/laySection.ts'
import { countAt, secondAt } from '#plan/beatGrid.ts'
import type { Section } from '#plan/model.ts'
import type { Counts, Seconds } from '#units/units.ts'

/** Turns counts of a section (0 = its count one, negative before it) into seconds of the ride and back. */
export interface SectionClock {
  at: (count: Counts) => Seconds
  countAt: (moment: Seconds) => Counts
  /** True where the counts are beats of a song; without one a count is half a second. */
  counted: boolean
}

export function sectionClock(section: Section, one: Seconds): SectionClock {
  const grid = section.song?.grid
  if (!grid) {
    const beat = 60 / ASSUMED_TEMPO
    return { at: (count) => one + count * beat, countAt: (moment) => (moment - one) / beat, counted: false }
  }
  const first = section.inCount ?? 0
  const zero = secondAt(grid, first)
  return {
    at: (count) => one + secondAt(grid, first + count) - zero,
    countAt: (moment) => countAt(grid, moment - one + zero) - first,
    counted: true,
  }
}
