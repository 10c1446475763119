import type { Block, Section } from '#plan/model.ts'
import { countAt, secondAt } from '#plan/songs/beatGrid.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { type RiddenCounts, riddenCounts } from './riddenCounts.ts'
import { type Unrolled, unrollItems } from './unrollItems.ts'

/** Tempo that turns counts into seconds while a song's own is not known; common practice has none, this is the middle of pop. */
export const ASSUMED_TEMPO = 120

/** A played block within its section: boundaries in seconds since count one, and in counts where the section is counted. */
export interface Laid extends Unrolled {
  from: Seconds
  to: Seconds
  countFrom?: Counts
  countTo?: Counts
  beyond: number
}

export interface LaidSection {
  blocks: Laid[]
  /** Length from count one to the end of the last span, before any crossfade. */
  seconds: Seconds
  counts?: RiddenCounts
  open: number
  beyond: number
}

/**
 * A section on its own clock. Boundaries come from cumulative counts through the song's grid,
 * or from one running sum of seconds, and neighbours share the same number.
 */
export function laySection(section: Section): LaidSection {
  const counts = riddenCounts(section)
  return counts ? layCounts(section, counts) : laySeconds(section)
}

function layCounts(section: Section, counts: RiddenCounts): LaidSection {
  const grid = section.song!.grid!
  const zero = secondAt(grid, counts.in)
  const clock = (count: Counts): Seconds => secondAt(grid, counts.in + count) - zero
  const blocks: Laid[] = []
  let count: Counts = 0
  let second: Seconds = 0
  for (const { block, set } of unrollItems(section.blocks)) {
    const { length } = block
    const countTo = 'counts' in length ? count + length.counts : countAt(grid, zero + second + length.seconds) - counts.in
    const to = clock(countTo)
    const beyond = Math.max(0, countTo - Math.max(count, counts.total))
    blocks.push({ block, set, from: second, to, countFrom: count, countTo, beyond })
    count = countTo
    second = to
  }
  const covered = count
  return {
    blocks,
    seconds: covered >= counts.total ? second : clock(counts.total),
    counts,
    open: Math.max(0, counts.total - covered),
    beyond: Math.max(0, covered - counts.total),
  }
}

function laySeconds(section: Section): LaidSection {
  const blocks: Laid[] = []
  const end = section.song?.lengthSeconds
  let second: Seconds = 0
  for (const { block, set } of unrollItems(section.blocks)) {
    const to = second + secondsOf(block)
    const beyond = end === undefined ? 0 : Math.max(0, to - Math.max(second, end))
    blocks.push({ block, set, from: second, to, countFrom: undefined, countTo: undefined, beyond })
    second = to
  }
  const seconds = Math.max(second, end ?? 0)
  return { blocks, seconds, open: seconds - second, beyond: end === undefined ? 0 : Math.max(0, second - end) }
}

/** Seconds of a block where no grid says how long a count is. */
function secondsOf({ length }: Block): Seconds {
  return 'seconds' in length ? length.seconds : (length.counts * 60) / ASSUMED_TEMPO
}
