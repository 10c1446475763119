import type { Decisions } from './decisions.ts'
import { otherSide, type Side, type Spot } from './difference.ts'
import type { Existence, Trees } from './existence.ts'
import { idOf, type Key, placeIn, ROOT, type Tree, thingOf } from './tree.ts'

/** In which list a thing stands, and whose order says where in it: nobody's is the base's, both is not yet decided. */
export interface Placing {
  list: Key
  by: Side | 'both' | 'nobody'
}

/**
 * Decides in which list everything stands. What one side put elsewhere goes there; put
 * elsewhere by both, it is a conflict. Where the list is no more, it stands in the next best
 * one: the other side's, the base's; and where none of them is left, the list comes back, so
 * that nothing is lost with its place. A set whose last part went goes too.
 */
export function placeAll(trees: Trees, { alive, kept }: Existence, decisions: Decisions): Map<Key, Placing> {
  const placings = new Map<Key, Placing>()
  // From the leaves up, so that a list that comes back is itself placed.
  for (const of of ['cue', 'block', 'set', 'section'] as const) {
    for (const key of [...alive].filter((each) => nodeOf(each).of === of).sort()) {
      const placing = placeOf(key)
      placings.set(key, placing)
      if (placing.list !== ROOT) alive.add(placing.list)
    }
  }
  withoutEmptySets()
  return placings

  function nodeOf(key: Key) {
    return (trees.mine.nodes.get(key) ?? trees.theirs.nodes.get(key))!
  }

  function placeOf(key: Key): Placing {
    const options = [wanted(key), standing(key, 'mine'), standing(key, 'theirs'), standing(key, 'base')]
    const possible = options.filter((option) => option !== undefined)
    return possible.find(({ list }) => list === ROOT || alive.has(list)) ?? possible[0]!
  }

  /** Where a thing stands in one of the three. */
  function standing(key: Key, where: Side | 'base'): Placing | undefined {
    const node = trees[where].nodes.get(key)
    if (!node) return undefined
    return { list: node.parent, by: where !== 'base' && trees.moved[where].has(key) ? where : 'nobody' }
  }

  function wanted(key: Key): Placing | undefined {
    const [mine, theirs] = [standing(key, 'mine'), standing(key, 'theirs')]
    if (!mine || !theirs) return mine ?? theirs
    const [mineBack, theirsBack] = [cameBack(mine.list, 'mine'), cameBack(theirs.list, 'theirs')]
    if (mineBack !== theirsBack) return mineBack ? mine : theirs
    if (mine.by === 'nobody' && theirs.by === 'nobody') return mine
    if (mine.by !== 'nobody' && theirs.by !== 'nobody')
      return mine.list === theirs.list ? { ...mine, by: 'both' } : decided(key, 'conflict')
    const side = mine.by === 'nobody' ? 'theirs' : 'mine'
    return cameWithTheList(key, side) ? standing(key, side) : decided(key, side)
  }

  /** A list that one side had taken out and that came back has in it what it had. */
  function cameBack(list: Key, side: Side): boolean {
    return kept.get(list) === side
  }

  /** Into a list one side made, or out of one it took away: part of that difference and none of its own. */
  function cameWithTheList(key: Key, side: Side): boolean {
    const [from, to] = [trees[otherSide(side)].nodes.get(key)!.parent, trees[side].nodes.get(key)!.parent]
    return from !== to && (!trees[otherSide(side)].nodes.has(to) || !trees[side].nodes.has(from))
  }

  function decided(key: Key, by: Side | 'conflict'): Placing | undefined {
    const side = decisions.decide(movement(trees, key, by))
    return standing(key, side)
  }

  function withoutEmptySets(): void {
    const held = new Set([...placings.values()].map(({ list }) => list))
    for (const key of [...alive]) {
      if (nodeOf(key).of !== 'set' || held.has(key)) continue
      alive.delete(key)
      placings.delete(key)
    }
  }
}

/** The difference of a thing that stands elsewhere. */
export function movement(trees: Trees, key: Key, by: Side | 'conflict') {
  return {
    kind: 'moved' as const,
    of: thingOf(trees.mine, key),
    id: `moved ${key}`,
    by,
    place: placeIn(trees.mine, key),
    base: trees.base.nodes.has(key) ? spotOf(trees.base, key) : undefined,
    mine: spotOf(trees.mine, key),
    theirs: spotOf(trees.theirs, key),
  }
}

function spotOf(tree: Tree, key: Key): Spot {
  const list = tree.nodes.get(key)!.parent
  const keys = tree.children.get(list) ?? []
  const before = keys[keys.indexOf(key) - 1]
  return { in: list === ROOT ? null : idOf(list), after: before === undefined ? null : idOf(before) }
}
