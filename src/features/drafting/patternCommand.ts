import { blockOfPattern } from '#engine/cues/blockOfPattern.ts'
import { laySection } from '#engine/timeline/laySection.ts'
import type { Command } from '#plan/commands/command.ts'
import { insertItem } from '#plan/commands/insertItem.ts'
import type { NewId } from '#plan/copies.ts'
import type { Length, Ride, Section } from '#plan/model.ts'
import type { BlockPattern } from '#plan/patterns/blockPattern.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import type { Counts } from '#units/units.ts'
import { say } from '#words/said.ts'
import { tell, words } from '#words/words.ts'

/** Adding a block of a pattern, and the id the block will have. */
interface PatternCommand {
  id: string
  command: Command
  /** Where the block makes the song longer than its music, a sentence that says so. */
  grows?: string
}

/**
 * Puts a block of a pattern at `index` of a section. It takes the gap the song still has: whole eights, or what is
 * left where that is less than one. Only a song without a gap is made longer, and then it says so.
 */
export function patternCommand(
  ride: Ride,
  { pattern, section, index, newId }: { pattern: BlockPattern; section: Section; index: number; newId: NewId },
): PatternCommand {
  const block = blockOfPattern(pattern, ride, section, newId)
  const { open, seconds } = laySection(section)
  const item = section.song ? { ...block, length: inGap(block.length, open, eightOf(section.song.grid)) } : block
  const command = insertItem(ride, { sectionId: section.id, index, item })
  const longer = laySection({ ...section, blocks: [...section.blocks, item] }).seconds - seconds
  if (!section.song || longer <= 0) return { id: block.id, command }
  const label = say('drafting.addedPast', { change: command.label, over: longer })
  return { id: block.id, command: { ...command, label }, grows: words.drafting.runsPast({ name: tell(pattern.name), over: longer }) }
}

/** @param open counts or seconds the song still has, as the length is measured */
function inGap(length: Length, open: number, eight: Counts): Length {
  if (open <= 0) return length
  if ('seconds' in length) return { seconds: Math.min(length.seconds, Math.floor(open) || open) }
  return { counts: Math.min(length.counts, open < eight ? open : Math.floor(open / eight) * eight) }
}
