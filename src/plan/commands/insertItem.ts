import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { clampIndex, editBlocksIn, editSection, withItems } from '#plan/edits.ts'
import type { Item, Ride } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { lengthFor } from '#plan/remeasure.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Puts a new block or set at `index` of a section, its lengths as the section measures.
 * Nothing happens when one of its ids is already in the ride, or when a set has no parts.
 */
export function insertItem(ride: Ride, { sectionId, index, item }: { sectionId: string; index: number; item: Item }): Command {
  return makeCommand(labelOf(ride, sectionId, index, item), (before) =>
    editSection(before, sectionId, (section) => {
      const measured = editBlocksIn(item, (block) => ({ ...block, length: lengthFor(section, block.length) }))
      return withItems(section, section.blocks.toSpliced(clampIndex(index, section.blocks.length), 0, measured))
    }),
  )
}

function labelOf(ride: Ride, sectionId: string, index: number, item: Item): Text {
  const section = findSection(ride, sectionId)
  if (!section) return say('commands.nothingTo', { verb: 'add' })
  const next = section.blocks[clampIndex(index, section.blocks.length)]
  return say('commands.added', { name: itemName(item), next: next && itemName(next), where: sectionName(ride, section) })
}
