import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { copyBlock, copyItem, type NewId, rememberedIds } from '#plan/copies.ts'
import { clampIndex, editSection, editSet, withItems, withParts } from '#plan/edits.ts'
import { type Block, type Item, isSet, type Ride } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { findSection, findSet } from '#plan/places.ts'
import { say, type Text } from '#words/said.ts'
import type { PartTarget } from './movePart.ts'

/**
 * Puts copies of items, measured as their new section measures, at a place in a section or among the parts of a set, with
 * ids of their own. A set cannot go into a set: then nothing happens.
 *
 * @param past seconds by which they make the song longer than its music, to be told
 */
export function pasteItems(
  ride: Ride,
  { items, to, newId, past = 0 }: { items: readonly Item[]; to: PartTarget; newId: NewId; past?: number },
): Command {
  const freshIds = rememberedIds(newId)
  return makeCommand(labelOf(ride, items, to, past), (before) => {
    const nextId = freshIds()
    if (items.length === 0) return before
    if ('sectionId' in to) {
      const copies = items.map((item) => copyItem(item, nextId))
      return editSection(before, to.sectionId, (section) => withItems(section, spliced(section.blocks, to.index, copies)))
    }
    const blocks = items.filter((item): item is Block => !isSet(item))
    if (blocks.length < items.length) return before
    const copies = blocks.map((block) => copyBlock(block, nextId))
    return editSet(before, to.setId, (set) => withParts(set, spliced(set.parts, to.index, copies)))
  })
}

/** Puts copies of items in place of all blocks of a section, with ids of their own; its song stays. */
export function replaceBlocks(
  ride: Ride,
  { sectionId, items, newId }: { sectionId: string; items: readonly Item[]; newId: NewId },
): Command {
  const freshIds = rememberedIds(newId)
  const section = findSection(ride, sectionId)
  const label = section
    ? say('clipboard.replacedBlocks', { where: sectionName(ride, section), count: items.length })
    : say('commands.nothingTo', { verb: 'add' })
  return makeCommand(label, (before) => {
    const nextId = freshIds()
    const copies = items.map((item) => copyItem(item, nextId))
    return items.length === 0 ? before : editSection(before, sectionId, (one) => withItems(one, copies))
  })
}

const spliced = <T>(list: readonly T[], index: number, more: readonly T[]): readonly T[] =>
  list.toSpliced(clampIndex(index, list.length), 0, ...more)

function labelOf(ride: Ride, items: readonly Item[], to: PartTarget, past: number): Text {
  const section = 'sectionId' in to ? findSection(ride, to.sectionId) : findSet(ride, to.setId)?.section
  if (!section || items.length === 0) return say('commands.nothingTo', { verb: 'add' })
  const names = items.map(itemName)
  const name =
    names.length <= 3
      ? say('names.list', { items: names })
      : say(items.some(isSet) ? 'names.items' : 'names.blocks', { count: names.length })
  const label = say('clipboard.pasted', { name, where: sectionName(ride, section) })
  return past > 0 ? say('drafting.addedPast', { change: label, over: past }) : label
}
