import type { Block, Cue, Item, Section } from '#plan/model.ts'
import { remeasureBlock } from '#plan/remeasure.ts'
import type { Decisions } from './decisions.ts'
import type { Trees } from './existence.ts'
import { mergeFields } from './mergeFields.ts'
import { measuredBy, type Songs } from './onOneMeasure.ts'
import { mergeOrder } from './order.ts'
import { movement, type Placing } from './placement.ts'
import { gatherBlock, gatherSection, gatherSet, type Spread, spreadOf } from './spread.ts'
import { idOf, type Key, type Node, placeIn, ROOT, sectionOf, type Tree, treeOf } from './tree.ts'

const WHERES = ['base', 'mine', 'theirs'] as const
type Where = (typeof WHERES)[number]

/**
 * The sections of the merged ride, put together from what there is and where it stands: each
 * list in its order, each thing with its values decided. Sections come first, for their songs
 * say how the blocks in them are measured.
 */
export function assemble(trees: Trees, placings: ReadonlyMap<Key, Placing>, decisions: Decisions): Section[] {
  const lists = new Map<Key, Key[]>()
  for (const [key, { list }] of placings) lists.set(list, [...(lists.get(list) ?? []), key])
  const order = ordered(ROOT)
  const heads = new Map(
    order.map((key) => [
      key,
      gatherSection(
        mergedFields(key, (where) => spreadSection(where, key)),
        [],
      ),
    ]),
  )
  const measured = measuredTrees()
  return order.map((key) => {
    const section = heads.get(key)!
    return { ...section, blocks: ordered(key).map((item) => itemOf(item, section)) }
  })

  function ordered(list: Key): Key[] {
    const by = new Map((lists.get(list) ?? []).map((key) => [key, placings.get(key)!.by]))
    const orderIn = (where: Where) => trees[where].children.get(list) ?? []
    return mergeOrder({ base: orderIn('base'), mine: orderIn('mine'), theirs: orderIn('theirs'), by, moved: trees.moved }, (key) =>
      decisions.decide(movement(trees, key, 'conflict')),
    )
  }

  /** A song is taken apart where both sides have the same one. */
  function spreadSection(where: Where, key: Key): Spread | undefined {
    const node = trees[where].nodes.get(key)
    const [mine, theirs] = [songIn(trees.mine, key), songIn(trees.theirs, key)]
    return node && spreadOf(node, mine !== undefined && mine.id === theirs?.id && songIn(trees[where], key)?.id === mine.id)
  }

  function measuredTrees(): Record<Where, Tree> {
    const songs: Songs = new Map([...heads].map(([key, { song }]) => [idOf(key), song ?? null]))
    const measure = (where: Where) => treeOf(measuredBy(trees[where].ride, songs))
    return { base: measure('base'), mine: measure('mine'), theirs: measure('theirs') }
  }

  function itemOf(key: Key, section: Section): Item {
    const fields = mergedFields(key, (where) => spreadIn(where, key, section))
    return isSetKey(key)
      ? gatherSet(
          fields,
          ordered(key).map((part) => itemOf(part, section) as Block),
        )
      : blockOf(key, fields, section)
  }

  function isSetKey(key: Key): boolean {
    return (trees.mine.nodes.get(key) ?? trees.theirs.nodes.get(key))!.of === 'set'
  }

  function blockOf(key: Key, fields: Spread, section: Section): Block {
    const cues = ordered(key).map((cue) => mergedFields(cue, (where) => spreadIn(where, cue, section)) as unknown as Cue)
    return gatherBlock(fields, cues)
  }

  /** The values of a thing in one of the three, as the section measures that it stands in now. */
  function spreadIn(where: Where, key: Key, section: Section): Spread | undefined {
    const tree = measured[where]
    const node = tree.nodes.get(key)
    if (!node || !trees[where].nodes.has(key)) return undefined
    const from = sectionOf(tree, key)!
    if (node.of === 'block') return spreadOf({ ...node, value: remeasureBlock(node.value, from, section) }, false)
    if (node.of !== 'cue') return spreadOf(node, false)
    const block = tree.nodes.get(node.parent)!.value as Block
    return { ...remeasureBlock(block, from, section).cues.find(({ id }) => id === node.value.id)! }
  }

  function mergedFields(key: Key, spread: (where: Where) => Spread | undefined): Spread {
    const [mine, theirs] = [spread('mine'), spread('theirs')]
    if (!mine || !theirs) return (mine ?? theirs)!
    const tree = trees.mine
    const { of } = tree.nodes.get(key) as Node
    const base = decisions.based ? spread('base') : undefined
    return mergeFields({ base, mine, theirs }, { id: key, of, place: placeIn(tree, key) }, decisions)
  }
}

const songIn = (tree: Tree, key: Key) => {
  const node = tree.nodes.get(key)
  return node?.of === 'section' ? (node.value.song ?? undefined) : undefined
}
