import { ASSUMED_TEMPO } from '#engine/timeline/laySection.ts'
import type { Section } from '#plan/model.ts'
import { beatOf, countAt, countOf, secondAt } from '#plan/songs/beatGrid.ts'
import type { Counts, Seconds } from '#units/units.ts'

/**
 * Turns counts of a section (0 = its count one, negative before it) into seconds of the ride and back, and the same for
 * its beats. The two are one but where a song has beats over or missing: what is counted down, said ahead of a change or
 * clicked goes by beats.
 */
export interface SectionClock {
  at: (count: Counts) => Seconds
  countAt: (moment: Seconds) => Counts
  atBeat: (beat: number) => Seconds
  beatAt: (moment: Seconds) => number
  /** Which beat a count is, and which count a beat: a fraction where it is over. */
  beatOf: (count: Counts) => number
  countOf: (beat: number) => Counts
  /** True where the counts are beats of a song; without one a count is half a second. */
  counted: boolean
}

export function sectionClock(section: Section, one: Seconds): SectionClock {
  const grid = section.song?.grid
  if (!grid) {
    const beat = 60 / ASSUMED_TEMPO
    const at = (count: Counts): Seconds => one + count * beat
    const from = (moment: Seconds): Counts => (moment - one) / beat
    return { at, countAt: from, atBeat: at, beatAt: from, beatOf: same, countOf: same, counted: false }
  }
  const first = section.inCount ?? 0
  const zero = secondAt(grid, first)
  const at = (count: Counts): Seconds => one + secondAt(grid, first + count) - zero
  const from = (moment: Seconds): Counts => countAt(grid, moment - one + zero) - first
  if (grid.odd === undefined) return { at, countAt: from, atBeat: at, beatAt: from, beatOf: same, countOf: same, counted: true }
  const start = beatOf(grid, first)
  const toBeat = (count: Counts): number => beatOf(grid, first + count) - start
  const toCount = (beat: number): Counts => countOf(grid, start + beat) - first
  return {
    at,
    countAt: from,
    atBeat: (beat) => at(toCount(beat)),
    beatAt: (moment) => toBeat(from(moment)),
    beatOf: toBeat,
    countOf: toCount,
    counted: true,
  }
}

const same = (value: number): number => value
