import { type ActionPlace, type KeyRow, keyWords } from '#actions/action.ts'

/** What stands under one heading of the key map. */
interface KeyGroup {
  title: string
  rows: readonly KeyRow[]
}

/** The key map of places: groups of one title together, and neighbours that say the same in one row. What has no key is left out. */
export function keyGroups(places: readonly ActionPlace<never>[]): KeyGroup[] {
  const groups = new Map<string, KeyRow[]>()
  for (const { title, actions, also = [] } of places.flatMap((place) => place.groups)) {
    const rows = groups.get(title) ?? []
    groups.set(title, rows)
    for (const row of [...actions, ...also]) {
      const { does } = row
      const keys = keyWords(row)
      const last = rows.at(-1)
      if (last?.does === does) rows[rows.length - 1] = { keys: [...last.keys, ...keys], does }
      else if (keys.length > 0) rows.push({ keys, does })
    }
  }
  return [...groups].map(([title, rows]) => ({ title, rows })).filter(({ rows }) => rows.length > 0)
}
