import type { Side } from './difference.ts'
import { longestCommon } from './longestCommon.ts'
import type { Key } from './tree.ts'

/** One list to be put in order: each side's order, and whose order counts for each entry. */
interface OrderedBy {
  base: readonly Key[]
  mine: readonly Key[]
  theirs: readonly Key[]
  by: ReadonlyMap<Key, Side | 'both' | 'nobody'>
  /** What stands elsewhere in a side than in the base. */
  moved: Record<Side, ReadonlySet<Key>>
}

/**
 * The order of a list that two sides changed. What nobody moved keeps the base's order and
 * divides the list into gaps; what a side moved or added stands in the gap, and in the order,
 * it has there. Two such runs in one gap are joined at what they have in common; where they
 * have nothing, the run that starts with the smaller key goes first, so that it is the same
 * from either side.
 *
 * @param decide says whose place an entry takes that both moved to different places
 */
export function mergeOrder({ base, mine, theirs, by, moved }: OrderedBy, decide: (key: Key) => Side): Key[] {
  const fixed = base.filter((key) => by.get(key) === 'nobody')
  const gaps = { mine: gapsOf(mine, fixed, moved.mine), theirs: gapsOf(theirs, fixed, moved.theirs) }
  const placedBy = new Map(by)
  const both = [...by.keys()].filter((key) => by.get(key) === 'both').sort()
  const agreed = new Set(both.filter((key) => gaps.mine.get(key) === gaps.theirs.get(key)))
  const amongAgreed = (order: readonly Key[]) => order.filter((key) => agreed.has(key))
  const inStep = new Set(longestCommon(amongAgreed(mine), amongAgreed(theirs)))
  for (const key of both) if (!inStep.has(key)) placedBy.set(key, decide(key))

  const run = (order: readonly Key[], side: Side, gap: number) =>
    order.filter((key) => gaps[side].get(key) === gap && (placedBy.get(key) === side || placedBy.get(key) === 'both'))
  return [undefined, ...fixed].flatMap((key, gap) => [
    ...(key === undefined ? [] : [key]),
    ...joined(run(mine, 'mine', gap), run(theirs, 'theirs', gap), inStep),
  ])
}

/** Behind how many of the fixed entries each entry stands, by the last of them before it that the side has left in its place. */
function gapsOf(order: readonly Key[], fixed: readonly Key[], moved: ReadonlySet<Key>): Map<Key, number> {
  const places = new Map(fixed.map((key, index): [Key, number] => [key, index + 1]).filter(([key]) => !moved.has(key)))
  let gap = 0
  return new Map(
    order.map((key) => {
      gap = places.get(key) ?? gap
      return [key, gap]
    }),
  )
}

/** Two runs as one, joined at the entries they share in one order. */
function joined(mine: readonly Key[], theirs: readonly Key[], shared: ReadonlySet<Key>): Key[] {
  const [mineAt, theirsAt] = [mine.findIndex((key) => shared.has(key)), theirs.findIndex((key) => shared.has(key))]
  if (mineAt < 0 || theirsAt < 0) return sideBySide(mine, theirs)
  return [
    ...sideBySide(mine.slice(0, mineAt), theirs.slice(0, theirsAt)),
    mine[mineAt]!,
    ...joined(mine.slice(mineAt + 1), theirs.slice(theirsAt + 1), shared),
  ]
}

const sideBySide = (a: readonly Key[], b: readonly Key[]): Key[] => {
  if (a.length === 0 || b.length === 0) return [...a, ...b]
  return a[0]! < b[0]! ? [...a, ...b] : [...b, ...a]
}
