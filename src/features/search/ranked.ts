import { type Fit, hitsOf } from './matcher.ts'

/** Headings of the list, in the order in which they stand where nothing fits better. */
const GROUPS = ['actions', 'here', 'checks', 'rides', 'elsewhere', 'songs', 'rules', 'handbook'] as const
type Group = (typeof GROUPS)[number]

/** Rows of one heading that are shown; who wants others types on. */
export const MOST = 8

/** Something that can be found. In a list of one group, what is nearer or newer stands first. */
export interface Findable {
  /** The only one of its kind. */
  id: string
  group: Group
  /** What it is found by, as `foundBy` gives it. */
  text: string
  /** It can be seen and not done: it stands behind all others. */
  blocked?: boolean
}

/** What was found under one heading. */
export interface Found<Item extends Findable> {
  group: Group
  items: Item[]
  /** How many there are, shown or not. */
  total: number
}

/**
 * What fits a query, by heading: what begins so before words that do, before what has it in the middle; of the same fit
 * what stands first in the list. The heading with the best fit stands first, what cannot be done behind that, and help last.
 *
 * @param items in the order of each group: this ride before others, recent before old
 */
export function ranked<Item extends Findable>(items: readonly Item[], texts: readonly string[], query: string): Found<Item>[] {
  const byGroup = new Map<Group, { item: Item; fit: Fit }[]>()
  for (const { index, fit } of hitsOf(texts, query)) {
    const item = items[index]!
    const hits = byGroup.get(item.group) ?? []
    byGroup.set(item.group, hits)
    hits.push({ item, fit })
  }
  return GROUPS.flatMap((group) => {
    const hits = byGroup.get(group)
    if (!hits) return []
    const sorted = hits.toSorted((a, b) => rank(a) - rank(b))
    return [
      {
        group,
        best: rank(sorted[0]!) + (group === 'handbook' ? BEHIND : 0),
        items: sorted.slice(0, MOST).map(({ item }) => item),
        total: hits.length,
      },
    ]
  })
    .toSorted((a, b) => a.best - b.best)
    .map(({ best: _best, ...found }) => found)
}

/** What cannot be done stands behind every fit there is, and help about it behind that. */
const rank = ({ item, fit }: { item: Findable; fit: Fit }): number => fit + (item.blocked ? BLOCKED : 0)
const BLOCKED = 10
const BEHIND = 20
