import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { clampIndex, editSection, editSections, moveWithin, withItems } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { findItem, findSection } from '#plan/places.ts'
import { remeasureItem } from '#plan/remeasure.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Moves a block or a set so that it stands at `index` of the section, counted without the
 * moved item; an index out of range goes to the nearest end. Between a section in counts
 * and one in seconds its length is converted.
 */
export function moveItem(ride: Ride, move: { itemId: string; sectionId: string; index: number }): Command {
  return makeCommand(labelOf(ride, move), (before) => applyMove(before, move))
}

function applyMove(ride: Ride, { itemId, sectionId, index }: { itemId: string; sectionId: string; index: number }): Ride {
  const place = findItem(ride, itemId)
  const target = findSection(ride, sectionId)
  if (!place || !target) return ride
  if (place.section === target) {
    return editSection(ride, sectionId, (section) => withItems(section, moveWithin(section.blocks, place.index, index)))
  }
  const moved = remeasureItem(place.item, place.section, target)
  return editSections(ride, (section) => {
    if (section === place.section) return withItems(section, section.blocks.toSpliced(place.index, 1))
    if (section === target) return withItems(section, section.blocks.toSpliced(clampIndex(index, section.blocks.length), 0, moved))
    return section
  })
}

function labelOf(ride: Ride, { itemId, sectionId, index }: { itemId: string; sectionId: string; index: number }): Text {
  const place = findItem(ride, itemId)
  const target = findSection(ride, sectionId)
  if (!place || !target) return say('commands.nothingTo', { verb: 'move' })
  const others = target.blocks.filter((item) => item.id !== itemId)
  const next = others[clampIndex(index, others.length)]
  return say('commands.moved', { name: itemName(place.item), next: next && itemName(next), where: sectionName(ride, target) })
}
