import { sameValue } from '#plan/edits.ts'
import { remeasureBlock } from '#plan/remeasure.ts'
import type { Decisions } from './decisions.ts'
import { type Origin, otherSide, type Side } from './difference.ts'
import { measuredBy, songsOf } from './onOneMeasure.ts'
import { spreadOf } from './spread.ts'
import { type Key, type Node, placeIn, sectionOf, type Tree, thingOf, treeOf } from './tree.ts'

/** The base (or what stands for it) and the two rides as tables, with what moved in each. */
export interface Trees {
  base: Tree
  mine: Tree
  theirs: Tree
  moved: Record<Side, ReadonlySet<Key>>
}

/** What there is in the merged ride. */
export interface Existence {
  alive: Set<Key>
  /** What came back although one side had taken it out, with the side that kept it. */
  kept: ReadonlyMap<Key, Side>
}

/**
 * Decides what there is. What a side added stays; what it took out goes, unless the other
 * side changed it, moved it, or put something into it since: that is a conflict, and until
 * it is decided the thing stays. What stands in an added or deleted thing goes with it.
 */
export function decideExistence(trees: Trees, decisions: Decisions): Existence {
  const alive = new Set<Key>([...trees.mine.nodes.keys()].filter((key) => trees.theirs.nodes.has(key)))
  const kept = new Map<Key, Side>()

  for (const side of ['mine', 'theirs'] as const) {
    const tree = trees[side]
    const touched = touchedBy(side, trees)
    const isOnly = (key: Key) => tree.nodes.has(key) && !trees[otherSide(side)].nodes.has(key)
    const isOld = (key: Key) => trees.base.nodes.has(key)
    const about = (key: Key) => ({ of: thingOf(tree, key), place: placeIn(tree, key) })

    for (const { key, parent } of tree.nodes.values()) {
      if (!isOnly(key)) continue
      const goesWithParent = isOnly(parent) && (isOld(parent) || goesWithOld(parent) || !isOld(key))
      if (goesWithParent) continue
      const whole = isOld(key) ? branch(key, isOnly) : branch(key, (child) => isOnly(child) && !isOld(child))
      if (!(isOld(key) ? survives(key, whole) : added(key))) continue
      for (const each of whole) alive.add(each)
      if (isOld(key)) for (const each of whole) kept.set(each, side)
    }

    /** Whether a new thing stands in one that was taken out, at any depth. */
    function goesWithOld(key: Key): boolean {
      const parent = tree.nodes.get(key)?.parent
      return parent !== undefined && isOnly(parent) && (isOld(parent) || goesWithOld(parent))
    }

    /** A thing and what hangs on it, as far down as it belongs. */
    function branch(key: Key, belongs: (key: Key) => boolean): Key[] {
      const below = (tree.children.get(key) ?? []).filter(belongs)
      return [key, ...below.flatMap((child) => branch(child, belongs))]
    }

    function survives(key: Key, whole: readonly Key[]): boolean {
      const by: Origin = whole.some(touched) ? 'conflict' : otherSide(side)
      const difference = { kind: 'deleted' as const, ...about(key), id: `deleted ${key}`, by, deletedBy: otherSide(side) }
      return decisions.decide(difference, side) === side
    }

    function added(key: Key): boolean {
      return decisions.decide({ kind: 'added', ...about(key), id: `added ${key}`, by: side, addedBy: side }) === side
    }
  }
  return { alive, kept }
}

/** Whether a side worked on a thing since the base: changed its values, moved it, or put something into it. */
function touchedBy(side: Side, { base, moved, ...sides }: Trees): (key: Key) => boolean {
  const tree = sides[side]
  // Lengths as this side measures them: a song given a tempo is no work on its blocks.
  const before = treeOf(measuredBy(base.ride, songsOf(tree.ride.sections)))
  return (key) => {
    const old = base.nodes.get(key)
    if (!old || moved[side].has(key)) return true
    const gained = tree.children.get(key)?.some((child) => base.nodes.get(child)?.parent !== key)
    return gained || !sameFields(old.of === 'section' ? old : measured(before.nodes.get(key)!, before, tree), tree.nodes.get(key)!)
  }
}

/** A block as the section measures that it stands in elsewhere. */
function measured(old: Node, from: Tree, to: Tree): Node {
  if (old.of !== 'block') return old
  const [source, target] = [sectionOf(from, old.key), sectionOf(to, old.key)]
  return source && target ? { ...old, value: remeasureBlock(old.value, source, target) } : old
}

const sameFields = (a: Node, b: Node): boolean => sameValue(spreadOf(a, false), spreadOf(b, false))
