import { type Block, type Item, isSet, type Ride, type Section, type SetBlock } from '#plan/model.ts'
import type { BlockPlace } from '#plan/places.ts'

/**
 * Changes to one part of a ride. Each gives back the very object it was given when the
 * change does, and keeps every other part identical.
 */

/** The list with each element changed; the same list when none was. */
export function mapSame<T>(list: readonly T[], change: (element: T, index: number) => T): readonly T[] {
  const next = list.map(change)
  return next.every((element, index) => element === list[index]) ? list : next
}

/** The ride with its sections changed one by one. */
export function editSections(ride: Ride, change: (section: Section, index: number) => Section): Ride {
  const sections = mapSame(ride.sections, change)
  return sections === ride.sections ? ride : { ...ride, sections }
}

/** The ride with one section changed. */
export function editSection(ride: Ride, sectionId: string, change: (section: Section) => Section): Ride {
  return editSections(ride, (section) => (section.id === sectionId ? change(section) : section))
}

/** The section with each of its blocks changed, parts of sets included. */
export function editBlocksOf(section: Section, change: (block: Block) => Block): Section {
  return withItems(
    section,
    mapSame(section.blocks, (item) => editBlocksIn(item, change)),
  )
}

/** The item with each of its blocks changed: itself, or the parts of a set. */
export function editBlocksIn(item: Item, change: (block: Block) => Block): Item {
  return isSet(item) ? withParts(item, mapSame(item.parts, change)) : change(item)
}

/** The ride with one block changed, wherever it stands. */
export function editBlock(ride: Ride, blockId: string, change: (block: Block, section: Section) => Block): Ride {
  return editSections(ride, (section) => editBlocksOf(section, (block) => (block.id === blockId ? change(block, section) : block)))
}

/** The ride with one set changed. */
export function editSet(ride: Ride, setId: string, change: (set: SetBlock, section: Section) => SetBlock): Ride {
  return editSections(ride, (section) =>
    withItems(
      section,
      mapSame(section.blocks, (item) => (item.id === setId && isSet(item) ? change(item, section) : item)),
    ),
  )
}

/** The ride with blocks from a place on replaced by others, in whatever list the place is in. */
export function spliceBlocks(ride: Ride, { section, set, index }: BlockPlace, remove: number, ...blocks: Block[]): Ride {
  return set
    ? editSet(ride, set.id, () => withParts(set, set.parts.toSpliced(index, remove, ...blocks)))
    : editSection(ride, section.id, () => withItems(section, section.blocks.toSpliced(index, remove, ...blocks)))
}

/** The section with other items; the same section when the list is the one it has. */
export const withItems = (section: Section, blocks: readonly Item[]): Section =>
  blocks === section.blocks ? section : { ...section, blocks }

/** The set with other parts; the same set when the list is the one it has. */
export const withParts = (set: SetBlock, parts: readonly Block[]): SetBlock => (parts === set.parts ? set : { ...set, parts })

/** The list with the element at `from` moved so that it stands at `to` in the result; the same list when it stands there already. */
export function moveWithin<T>(list: readonly T[], from: number, to: number): readonly T[] {
  const target = clampIndex(to, list.length - 1)
  return target === from ? list : list.toSpliced(from, 1).toSpliced(target, 0, list[from]!)
}

/** A whole index from 0 to `last`; anything that is no number counts as the last. */
export function clampIndex(index: number, last: number): number {
  return Number.isNaN(index) ? last : Math.max(0, Math.min(last, Math.round(index)))
}

/**
 * The value with some fields replaced, those given as undefined left out; the same value
 * when every field already says so.
 */
export function patched<T extends object>(value: T, patch: Partial<NoInfer<T>>): T {
  const changes = (Object.keys(patch) as (keyof T)[]).filter((key) => !sameValue(value[key], patch[key]))
  if (changes.length === 0) return value
  const next = { ...value }
  for (const key of changes) {
    if (patch[key] === undefined) delete next[key]
    else next[key] = patch[key]
  }
  return next
}

/** Whether two pieces of a document say the same. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null || Array.isArray(a) !== Array.isArray(b)) return false
  const keys = new Set([...Object.keys(a), ...Object.keys(b)])
  return [...keys].every((key) => sameValue(a[key as keyof typeof a], b[key as keyof typeof b]))
}
