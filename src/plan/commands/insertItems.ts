import { clampIndex, editBlocksIn, editSection, withItems } from '#plan/edits.ts'
import type { Item, Ride } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { lengthFor } from '#plan/remeasure.ts'
import { say } from '#words/said.ts'
import type { Command } from './command.ts'
import { makeCommand } from './makeCommand.ts'

/**
 * Puts new blocks and sets at `index` of a section, in their order, their lengths as the section measures. Nothing happens
 * when one of their ids is already in the ride.
 *
 * @param name what they are called together
 */
export function insertItems(
  ride: Ride,
  { sectionId, index, items, name }: { sectionId: string; index: number; items: readonly Item[]; name: string },
): Command {
  const section = findSection(ride, sectionId)
  const next = section?.blocks[clampIndex(index, section.blocks.length)]
  const label = section
    ? say('commands.added', { name, next: next && itemName(next), where: sectionName(ride, section) })
    : say('commands.nothingTo', { verb: 'add' })
  return makeCommand(label, (before) =>
    editSection(before, sectionId, (place) => {
      const measured = items.map((item) => editBlocksIn(item, (block) => ({ ...block, length: lengthFor(place, block.length) })))
      return withItems(place, place.blocks.toSpliced(clampIndex(index, place.blocks.length), 0, ...measured))
    }),
  )
}
