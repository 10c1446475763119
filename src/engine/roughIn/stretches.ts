import { layTimeline } from '#engine/timeline/layTimeline.ts'
import { patched } from '#plan/edits.ts'
import type { Ride, Section } from '#plan/model.ts'
import { countsOf, eightOf, secondAt } from '#plan/songs/beatGrid.ts'
import type { Counts, Seconds } from '#units/units.ts'

/** A section as it is to be filled, and when it is played. */
export interface Stretch {
  section: Section
  /** True for a song nothing is planned for yet. */
  open: boolean
  one: Seconds
  to: Seconds
  /** Whole eights there are to fill, what one lasts, and its size in the section's own measure. */
  eights: number
  eightSeconds: Seconds
  eightAmount: Counts | Seconds
  /** What is left after the last whole eight, in seconds of a song without beats. */
  rest: Seconds
}

/** By the clock an "eight" is five seconds, so that four of them are a round twenty. */
const CLOCK_EIGHT: Seconds = 5

/** Every section on the ride clock; songs without blocks are open. */
export function stretchesOf(ride: Ride): Stretch[] {
  const { sections } = layTimeline(ride)
  return ride.sections.map((section, index) => {
    const { one, to } = sections[index]!
    const open = isOpen(section)
    const grid = section.song?.grid
    const counts = countsOf(section)
    if (grid && counts !== null) {
      const eight = eightOf(grid)
      const eights = Math.floor(counts / eight)
      const from = section.inCount ?? 0
      const seconds = eights === 0 ? 0 : (secondAt(grid, from + eights * eight) - secondAt(grid, from)) / eights
      return { section, open: open && eights > 0, one, to, eights, eightSeconds: seconds, eightAmount: eight, rest: 0 }
    }
    const length = Math.floor(section.song?.lengthSeconds ?? 0)
    const eights = Math.floor(length / CLOCK_EIGHT)
    const rest = length - eights * CLOCK_EIGHT
    return { section, open: open && eights > 0, one, to, eights, eightSeconds: CLOCK_EIGHT, eightAmount: CLOCK_EIGHT, rest }
  })
}

/** A song nothing is planned for yet. */
export const isOpen = (section: Section): boolean => Boolean(section.song) && section.blocks.length === 0

/** Songs end at a phrase; the least that is left of one. */
const PHRASE_EIGHTS = 4
const LEAST_LEFT = 0.6

/**
 * Open songs with beats end phrases earlier, the longest first, until the ride fits its slot.
 * None loses more than two fifths, so a ride may still be too long.
 */
export function trimToSlot(ride: Ride): Ride {
  const spare = (stretches: readonly Stretch[]) => ride.slotMinutes * 60 - ride.clearUpSeconds - (stretches.at(-1)?.to ?? 0)
  let over = -spare(stretchesOf(ride))
  if (over <= 0) return ride
  const songs = stretchesOf(ride)
    .filter(({ section, open, eights }) => open && section.song?.grid && eights >= 2 * PHRASE_EIGHTS)
    .map((stretch) => ({ ...stretch, left: stretch.eights }))
  while (over > 1e-6) {
    const longest = songs
      .filter(({ left, eights }) => afterCut(left) >= LEAST_LEFT * eights)
      .sort((a, b) => b.left * b.eightSeconds - a.left * a.eightSeconds)[0]
    if (!longest) break
    over -= (longest.left - afterCut(longest.left)) * longest.eightSeconds
    longest.left = afterCut(longest.left)
  }
  const outs = new Map(
    songs
      .filter(({ left, eights }) => left < eights)
      .map(({ section, left, eightAmount }) => [section.id, (section.inCount ?? 0) + left * eightAmount]),
  )
  return {
    ...ride,
    sections: ride.sections.map((section) => patched(section, outs.has(section.id) ? { outCount: outs.get(section.id)! } : {})),
  }
}

/** The whole phrase before a length, a whole phrase on. */
const afterCut = (eights: number): number => (Math.ceil(eights / PHRASE_EIGHTS) - 1) * PHRASE_EIGHTS
