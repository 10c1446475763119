import { longestCommon } from './longestCommon.ts'
import type { Key, Tree } from './tree.ts'

/**
 * What stands elsewhere in a side than in the base: in another list, or in the same list
 * out of the order of the rest. Of two neighbours that changed places one counts as moved.
 * Things the base has not are moved in any place.
 */
export function movedIn(side: Tree, base: Tree): ReadonlySet<Key> {
  const moved = new Set<Key>()
  for (const [list, keys] of side.children) {
    const inPlace = new Set(longestCommon(base.children.get(list) ?? [], keys))
    for (const key of keys) if (!inPlace.has(key)) moved.add(key)
  }
  return moved
}
