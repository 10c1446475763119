import { type Block, type Item, isSet, type Ride, type Section, type SetBlock } from '#plan/model.ts'

/** Where an item stands in a ride. */
interface ItemPlace {
  section: Section
  item: Item
  /** Index in the section's blocks. */
  index: number
}

/** Where a block stands: on its own in a section, or as a part of a set. */
export interface BlockPlace {
  section: Section
  block: Block
  /** The list the block stands in: the section's blocks or the set's parts. */
  list: readonly Item[]
  index: number
  set?: SetBlock
}

/** The section of that id. */
export const findSection = (ride: Ride, id: string): Section | undefined => ride.sections.find((section) => section.id === id)

/** The block or set of that id standing directly in a section; parts of sets are not found. */
export function findItem(ride: Ride, id: string): ItemPlace | undefined {
  for (const section of ride.sections) {
    const index = section.blocks.findIndex((item) => item.id === id)
    if (index >= 0) return { section, item: section.blocks[index]!, index }
  }
  return undefined
}

/** The block of that id wherever it stands, parts of sets included. */
export function findBlock(ride: Ride, id: string): BlockPlace | undefined {
  for (const section of ride.sections) {
    for (const [index, item] of section.blocks.entries()) {
      if (!isSet(item)) {
        if (item.id === id) return { section, block: item, list: section.blocks, index }
        continue
      }
      const part = item.parts.findIndex((block) => block.id === id)
      if (part >= 0) return { section, block: item.parts[part]!, list: item.parts, index: part, set: item }
    }
  }
  return undefined
}

/** The set of that id. */
export function findSet(ride: Ride, id: string): { section: Section; set: SetBlock; index: number } | undefined {
  const place = findItem(ride, id)
  return place && isSet(place.item) ? { section: place.section, set: place.item, index: place.index } : undefined
}

/** Every id of sections, blocks, sets and parts, in the order of the ride. */
export function* idsOf(ride: Ride): Generator<string> {
  for (const section of ride.sections) {
    yield section.id
    for (const item of section.blocks) {
      yield item.id
      if (isSet(item)) for (const part of item.parts) yield part.id
    }
  }
}
