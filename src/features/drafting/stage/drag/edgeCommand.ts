import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { countingUnit } from '#engine/timeline/countingUnit.ts'
import type { Command } from '#plan/commands/command.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import type { Length, Ride, Section } from '#plan/model.ts'
import { lengthText } from '#plan/names.ts'
import { countAt, secondAt } from '#plan/songs/beatGrid.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { tell, words } from '#words/words.ts'
import { type Landing, landingAt } from './landing.ts'

/** Seconds an edge snaps to where there is no music to count. */
export const TIMED_STEP: Seconds = 5

/** What pulling an edge would do, and what that is in words to stand beside it: "phrase 3, 8 eights". */
export interface EdgePull {
  command: Command
  words: string
}

/**
 * What pulling the right edge of a played block to a time on the stage does. The edge falls where the music draws it
 * (`landingAt`), on single counts with `fine`, and where its section is timed the block is whole seconds long. In a later
 * round of a set the block's length is what is rounded, and the pull is shared by the rounds before it, so that this edge
 * is the one that follows the pointer.
 */
export function edgeCommand(ride: Ride, report: RideReport, index: number, at: Seconds, fine: boolean): EdgePull | null {
  const played = report.blocks[index]
  if (!played) return null
  const section = ride.sections[played.section]!
  const unit = countingUnit(section)
  const said = (length: Length) => tell(lengthText(length, unit.eight))
  const pull = (length: Length, landing?: Landing): EdgePull => ({
    command: resizeBlock(ride, { blockId: played.block.id, length }),
    words: landing ? words.drafting.landed({ place: landing.words, length: said(length) }) : said(length),
  })
  const start = countOfSong(section, played.countFrom)
  const end = countOfSong(section, played.countTo)
  const grid = section.song?.grid
  if (!grid || start === undefined || end === undefined) return pull({ seconds: timedLength(played, at, fine) })
  const origin = secondAt(grid, section.inCount ?? 0)
  const pointed = countAt(grid, origin + (at - report.sections[played.section]!.one))
  const round = played.set?.round ?? 1
  if (round > 1) return pull({ counts: rounded(end - start + (pointed - end) / round, fine ? 1 : unit.eight) })
  const landing = fine ? undefined : landingAt(section, unit, start, pointed)
  return pull({ counts: landing ? landing.count - start : Math.max(1, Math.round(pointed) - start) }, landing)
}

/** A count of a section in the counts of its song. */
export const countOfSong = (section: Section, count: Counts | undefined): Counts | undefined =>
  count === undefined ? undefined : (section.inCount ?? 0) + count

function timedLength({ from, to, set }: PlayedBlock, at: Seconds, fine: boolean): Seconds {
  return rounded(to - from + (at - to) / (set?.round ?? 1), fine ? 1 : TIMED_STEP)
}

/** To whole steps, one at least. */
const rounded = (value: number, step: number): number => Math.max(step, Math.round(value / step) * step)
