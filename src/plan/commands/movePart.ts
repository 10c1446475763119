import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { clampIndex, editSection, editSet, moveWithin, withItems, withParts } from '#plan/edits.ts'
import { type Block, isSet, type Ride, type Section, type SetBlock } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { type BlockPlace, findBlock, findSection, findSet } from '#plan/places.ts'
import { remeasureBlock } from '#plan/remeasure.ts'
import { say, type Text } from '#words/said.ts'
import { deleteItems } from './deleteItems.ts'

/** A place for a block: among the parts of a set, or on its own in a section. */
export type PartTarget = { setId: string; index: number } | { sectionId: string; index: number }

/**
 * Moves a block into a set, out of one, or within it. The index is counted without the
 * moved block (and without a set it leaves empty, which goes); out of range it means the
 * nearest end. Between counts and seconds the length is converted.
 */
export function movePart(ride: Ride, { blockId, to }: { blockId: string; to: PartTarget }): Command {
  return makeCommand(labelOf(ride, blockId, to), (before) => {
    const place = findBlock(before, blockId)
    if (!place) return before
    return 'setId' in to ? intoSet(before, place, to.setId, to.index) : intoSection(before, place, to.sectionId, to.index)
  })
}

function intoSet(ride: Ride, place: BlockPlace, setId: string, index: number): Ride {
  const target = findSet(ride, setId)
  if (!target) return ride
  if (place.set === target.set) return editSet(ride, setId, (set) => withParts(set, moveWithin(set.parts, place.index, index)))
  const block = remeasureBlock(place.block, place.section, target.section)
  return editSet(taken(ride, place.block), setId, (set) => withParts(set, inserted(set.parts, index, block)))
}

function intoSection(ride: Ride, place: BlockPlace, sectionId: string, index: number): Ride {
  const target = findSection(ride, sectionId)
  if (!target) return ride
  if (!place.set && place.section === target)
    return editSection(ride, sectionId, (section) => withItems(section, moveWithin(section.blocks, place.index, index)))
  const block = remeasureBlock(place.block, place.section, target)
  return editSection(taken(ride, place.block), sectionId, (section) => withItems(section, inserted(section.blocks, index, block)))
}

const taken = (ride: Ride, block: Block): Ride => deleteItems(ride, [block.id]).apply(ride)

const inserted = <T>(list: readonly T[], index: number, element: T): readonly T[] =>
  list.toSpliced(clampIndex(index, list.length), 0, element)

function labelOf(ride: Ride, blockId: string, to: PartTarget): Text {
  const place = findBlock(ride, blockId)
  const holder: Section | SetBlock | undefined = 'setId' in to ? findSet(ride, to.setId)?.set : findSection(ride, to.sectionId)
  if (!place || !holder) return say('commands.nothingTo', { verb: 'move' })
  const list = 'parts' in holder ? holder.parts : holder.blocks
  const staying = list.filter((item) => item.id !== blockId && !(isSet(item) && item === place.set && item.parts.length === 1))
  const next = staying[clampIndex(to.index, staying.length)]
  const where = 'parts' in holder ? nameOfSet(holder) : sectionName(ride, holder)
  return say('commands.moved', { name: itemName(place.block), next: next && itemName(next), where })
}

const nameOfSet = (set: SetBlock): Text =>
  set.label ? say('commands.intoSet', { label: set.label }) : say('commands.intoUnnamedSet', { name: itemName(set) })
