import type { RideReport } from '#engine/report.ts'
import { countAt, eightOf, secondAt } from '#plan/beatGrid.ts'
import type { Command } from '#plan/commands/command.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import type { Ride, Section } from '#plan/model.ts'
import type { Counts, Seconds } from '#units/units.ts'

/** Seconds an edge snaps to where there is no music to count. */
const TIMED_STEP: Seconds = 5

/**
 * What pulling the right edge of a played block to a time on the stage does: its length in whole eights,
 * or to a section mark of the song that is near, in whole counts with `fine`, or in seconds where its section is timed. In a later round of a set the
 * pull is shared by the rounds before it, so that this edge is the one that follows the pointer.
 */
export function edgeCommand(ride: Ride, report: RideReport, index: number, at: Seconds, fine: boolean): Command | null {
  const played = report.blocks[index]
  if (!played) return null
  const section = ride.sections[played.section]!
  const rounds = played.set?.round ?? 1
  const grid = section.song?.grid
  const { block } = played
  if (!grid || played.countFrom === undefined || played.countTo === undefined) {
    const step = fine ? 1 : TIMED_STEP
    const length = lengthInSeconds(played.to - played.from, at - played.to, rounds)
    return resizeBlock(ride, { blockId: block.id, length: { seconds: Math.max(step, Math.round(length / step) * step) } })
  }
  const origin = section.inCount ?? 0
  const one = report.sections[played.section]!.one
  const pointed = countAt(grid, secondAt(grid, origin) + (at - one)) - origin
  const counts = played.countTo - played.countFrom + (pointed - played.countTo) / rounds
  const mark = fine || rounds > 1 ? undefined : markNear(section, origin + pointed)
  if (mark !== undefined && mark - origin > played.countFrom) {
    return resizeBlock(ride, { blockId: block.id, length: { counts: mark - origin - played.countFrom } })
  }
  const step = fine ? 1 : eightOf(grid)
  return resizeBlock(ride, { blockId: block.id, length: { counts: Math.max(step, Math.round(counts / step) * step) } })
}

/** A section mark draws an edge that comes this near to it (common practice: half an eight). */
const MAGNET: Counts = 4

/** The mark of a section's song nearest to a count, if one is near. */
function markNear({ song }: Section, count: Counts): Counts | undefined {
  const near = (song?.marks ?? []).map((mark) => mark.count).filter((at) => Math.abs(at - count) <= MAGNET)
  return near.sort((a, b) => Math.abs(a - count) - Math.abs(b - count))[0]
}

const lengthInSeconds = (now: Seconds, pulled: Seconds, rounds: number): Seconds => now + pulled / rounds
