import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import type { NewId } from '#plan/copies.ts'
import { type Foot, type Item, isCounted, isSet, type Ride, type Section } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { findItem } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Cuts a section in two before one of its blocks or sets. Under a song the second half goes
 * on in the same song, from the count at which the first one is left, without a gap.
 * Nothing happens before the first item.
 *
 * @param foot that lands on the first count of the second half, so that the feet go on as they were; none where none is known
 */
export function splitSection(ride: Ride, { itemId, foot, newId }: { itemId: string; foot: Foot | null; newId: NewId }): Command {
  const sectionId = newId()
  return makeCommand(labelOf(ride, itemId), (before) => {
    const place = findItem(before, itemId)
    if (!place || place.index === 0) return before
    const at = before.sections.indexOf(place.section)
    const own = { id: sectionId, ...leadOf(place.item, foot) }
    return { ...before, sections: before.sections.toSpliced(at, 1, ...halvesOf(place.section, place.index, own)) }
  })
}

/** The foot that falls on the one of an item, before its first block swaps it. */
function leadOf(item: Item, foot: Foot | null): Pick<Section, 'lead'> {
  if (!foot) return {}
  const first = isSet(item) ? item.parts[0]! : item
  return { lead: first.lead !== 'swap' ? foot : foot === 'left' ? 'right' : 'left' }
}

function halvesOf(section: Section, index: number, own: Pick<Section, 'id' | 'lead'>): [Section, Section] {
  const { lead, inCount, outCount, notes, ...shared } = section
  const blocks = section.blocks.slice(0, index)
  const second = { ...shared, ...own, leadInSeconds: 0, blocks: section.blocks.slice(index) }
  if (!isCounted(section)) return [{ ...section, blocks }, second]
  const cut = (inCount ?? 0) + blocks.reduce((sum, item) => sum + amountOfItem(item), 0)
  return [
    { ...section, blocks, outCount: cut },
    { ...second, inCount: cut, ...(outCount !== undefined && { outCount }) },
  ]
}

const amountOfItem = (item: Item): number =>
  isSet(item) ? item.rounds * item.parts.reduce((sum, part) => sum + amountOf(part.length), 0) : amountOf(item.length)

function labelOf(ride: Ride, itemId: string): Text {
  const place = findItem(ride, itemId)
  return place
    ? say('commands.splitSong', { name: sectionName(ride, place.section), next: itemName(place.item) })
    : say('commands.nothingTo', { verb: 'split' })
}
