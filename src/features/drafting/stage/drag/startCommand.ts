import type { RideReport } from '#engine/report.ts'
import { countingUnit } from '#engine/timeline/countingUnit.ts'
import { blockBefore, moveStart } from '#plan/commands/moveStart.ts'
import type { Length, Ride } from '#plan/model.ts'
import { lengthText } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { countAt, secondAt } from '#plan/songs/beatGrid.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { tell, words } from '#words/words.ts'
import { countOfSong, type EdgePull, edgeCommand, TIMED_STEP } from './edgeCommand.ts'
import { landingAt } from './landing.ts'

/**
 * What pulling the left edge of a played block to a time on the stage does: the joint with the block before it moves, that
 * one gives or takes, and all that follows stays on its music. It falls where the right edge would. The first block of a song
 * or of a set has nobody to take from, and starts where it starts: it is made longer or shorter by as much as is pulled, and
 * its end is what falls on the music.
 */
export function startCommand(ride: Ride, report: RideReport, index: number, at: Seconds, fine: boolean): EdgePull | null {
  const played = report.blocks[index]
  const place = played && findBlock(ride, played.block.id)
  const before = place && blockBefore(place) && report.blocks[index - 1]
  if (!played || !place) return null
  if (!before) return edgeCommand(ride, report, index, played.to + played.from - at, fine)
  const section = ride.sections[played.section]!
  const unit = countingUnit(section)
  const pull = (by: number, length: Length, landing?: string): EdgePull => {
    const said = tell(lengthText(length, unit.eight))
    return {
      command: moveStart(ride, { blockId: played.block.id, by }),
      words: landing === undefined ? said : words.drafting.landed({ place: landing, length: said }),
    }
  }
  const start = countOfSong(section, before.countFrom)
  const joint = countOfSong(section, played.countFrom)
  const end = countOfSong(section, played.countTo)
  const grid = section.song?.grid
  if (!grid || start === undefined || joint === undefined || end === undefined) {
    const most = amountOf(place.block.length) - 1
    const step = fine ? 1 : TIMED_STEP
    const lengthBefore = amountOf(before.block.length)
    const pulled = Math.round((lengthBefore + at - played.from) / step) * step - lengthBefore
    const by = Math.min(most, Math.max(1 - lengthBefore, pulled))
    return pull(by, { seconds: most + 1 - by })
  }
  const pointed = countAt(grid, secondAt(grid, section.inCount ?? 0) + (at - report.sections[played.section]!.one))
  const landing = fine ? undefined : landingAt(section, unit, start, pointed)
  const to =
    landing && landing.count < end ? landing.count : beforeEnd(fine ? Math.round(pointed) : pointed, start, end, fine ? 1 : unit.eight)
  return pull(to - joint, { counts: end - to }, to === landing?.count ? landing.words : undefined)
}

/** The last step before the end where the pointer has gone past it, else the nearest count to it that leaves both one. */
function beforeEnd(pointed: Counts, start: Counts, end: Counts, step: Counts): Counts {
  const last = Math.floor((end - 1) / step) * step
  const wanted = Math.min(Math.round(pointed), last > start ? last : end - 1)
  return Math.max(start + 1, wanted)
}
