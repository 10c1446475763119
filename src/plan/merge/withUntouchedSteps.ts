import { editBlocksIn, editSections, mapSame, patched, sameValue, withItems } from '#plan/edits.ts'
import { type Block, isSet, type Ride, type SetBlock } from '#plan/model.ts'
import { type Node, treeOf } from './tree.ts'

/** A ride and what it was made from, each as it reads on the ride's own scale and on another. */
interface Readings {
  ride: Ride
  here: Ride
  before: Ride
  beforeHere: Ride
}

/**
 * The ride as it reads on another scale, with the steps nobody set since in the words of what
 * it was made from. A coarse scale rounds, and reading it back does not bring the rounded part
 * again: ¼ is 0 in whole levels, and 0 when it comes back. What stands as the earlier ride
 * reads there was not touched, so it is what the earlier ride says here.
 */
export function withUntouchedSteps({ ride, here, before, beforeHere }: Readings): Ride {
  const [now, was, is] = [ride, before, beforeHere].map((each) => treeOf(each).nodes) as [Nodes, Nodes, Nodes]

  function settled<Thing extends Block | SetBlock>(thing: Thing, of: Node['of'], fields: readonly (keyof Thing)[]): Thing {
    const [own, old, same] = [now, was, is].map((nodes) => nodes.get(`b ${thing.id}`))
    if (own?.of !== of || old?.of !== of || same?.of !== of) return thing
    const said = (node: Node, field: keyof Thing) => (node.value as Thing)[field]
    const untouched = fields.filter((field) => sameValue(said(own, field), said(old, field)))
    return patched(thing, Object.fromEntries(untouched.map((field) => [field, said(same, field)])) as Partial<Thing>)
  }

  const settledBlock = (block: Block): Block => settled(block, 'block', ['resistance', 'ownTotal'])
  return editSections(here, (section) =>
    withItems(
      section,
      mapSame(section.blocks, (item) => editBlocksIn(isSet(item) ? settled(item, 'set', ['perRound']) : item, settledBlock)),
    ),
  )
}

type Nodes = ReturnType<typeof treeOf>['nodes']
