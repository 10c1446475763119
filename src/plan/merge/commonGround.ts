import { longestCommon } from './longestCommon.ts'
import type { Key, Node, Tree } from './tree.ts'

/** The key of no list: where something stands of which it is not known where it stood. */
const UNKNOWN: Key = ''

/**
 * What stands for a base that is not known: what both have, in the lists and the order they
 * have in common. It says nothing about values.
 */
export function commonGround(mine: Tree, theirs: Tree): Tree {
  const nodes = new Map<Key, Node>()
  const children = new Map<Key, readonly Key[]>()
  for (const [key, node] of mine.nodes) {
    const other = theirs.nodes.get(key)
    if (other) nodes.set(key, other.parent === node.parent ? node : { ...node, parent: UNKNOWN })
  }
  for (const [list, keys] of mine.children) {
    const others = theirs.children.get(list)
    if (others) children.set(list, longestCommon(keys, others))
  }
  return { ride: mine.ride, nodes, children }
}
