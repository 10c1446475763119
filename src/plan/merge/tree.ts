import { type Block, type Cue, type Item, isSet, type Ride, type Section, type SetBlock } from '#plan/model.ts'
import type { PlaceInRide, Thing } from './difference.ts'

/** Names a thing in a ride: its kind's letter and its id, since only things of one kind have different ids. */
export type Key = string

/** The key of the list of sections. */
export const ROOT: Key = 'ride'

/** A section, set, block or cue with where it stands. `value` still holds its children. */
export type Node = { key: Key; parent: Key } & (
  | { of: 'section'; value: Section }
  | { of: 'set'; value: SetBlock }
  | { of: 'block'; value: Block }
  | { of: 'cue'; value: Cue }
)

/** A ride as a table of its things and the order of each list in it. */
export interface Tree {
  ride: Ride
  nodes: ReadonlyMap<Key, Node>
  children: ReadonlyMap<Key, readonly Key[]>
}

const sectionKey = (id: string): Key => `s ${id}`
const itemKey = (id: string): Key => `b ${id}`
const cueKey = (id: string): Key => `c ${id}`

export const idOf = (key: Key): string => key.slice(2)

/** Takes a ride apart. Blocks and sets share their ids, so they share a letter; a block keeps its key when it goes into a set. */
export function treeOf(ride: Ride): Tree {
  const nodes = new Map<Key, Node>()
  const children = new Map<Key, Key[]>([[ROOT, ride.sections.map(({ id }) => sectionKey(id))]])

  const addItem = (item: Item, parent: Key) => {
    const key = itemKey(item.id)
    if (isSet(item)) {
      nodes.set(key, { key, parent, of: 'set', value: item })
      children.set(
        key,
        item.parts.map((part) => itemKey(part.id)),
      )
      for (const part of item.parts) addItem(part, key)
      return
    }
    nodes.set(key, { key, parent, of: 'block', value: item })
    children.set(
      key,
      item.cues.map((cue) => cueKey(cue.id)),
    )
    for (const cue of item.cues) nodes.set(cueKey(cue.id), { key: cueKey(cue.id), parent: key, of: 'cue', value: cue })
  }

  for (const section of ride.sections) {
    const key = sectionKey(section.id)
    nodes.set(key, { key, parent: ROOT, of: 'section', value: section })
    children.set(
      key,
      section.blocks.map((item) => itemKey(item.id)),
    )
    for (const item of section.blocks) addItem(item, key)
  }
  return { ride, nodes, children }
}

/** The section a thing of the tree stands in. */
export function sectionOf(tree: Tree, key: Key): Section | undefined {
  const node = tree.nodes.get(key)
  if (!node) return undefined
  return node.of === 'section' ? node.value : sectionOf(tree, node.parent)
}

/** Where a thing stands, by ids. */
export function placeIn(tree: Tree, key: Key): PlaceInRide {
  const node = tree.nodes.get(key)
  if (!node) return {}
  const above = placeIn(tree, node.parent)
  const { id } = node.value
  if (node.of === 'section') return { sectionId: id }
  if (node.of === 'cue') return { ...above, cueId: id }
  return above.itemId === undefined ? { ...above, itemId: id } : { ...above, partId: id }
}

export const thingOf = (tree: Tree, key: Key): Thing => tree.nodes.get(key)!.of
