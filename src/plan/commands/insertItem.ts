import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { clampIndex, editBlocksIn, editSection, withItems } from '#plan/edits.ts'
import type { Item, Ride } from '#plan/model.ts'
import { nameOfItem, nameOfSection } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { lengthFor } from '#plan/remeasure.ts'

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

function labelOf(ride: Ride, sectionId: string, index: number, item: Item): string {
  const section = findSection(ride, sectionId)
  if (!section) return 'Added nothing'
  const next = section.blocks[clampIndex(index, section.blocks.length)]
  const where = nameOfSection(ride, section)
  return next ? `Added ${nameOfItem(item)} before ${nameOfItem(next)} in ${where}` : `Added ${nameOfItem(item)} to the end of ${where}`
}
