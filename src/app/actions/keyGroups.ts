import { type ActionPlace, keyWords } from '#actions/action.ts'
import { tell } from '#words/words.ts'

/** What stands under one heading of the key map, in the language of the page. */
interface KeyGroup {
  title: string
  rows: readonly Row[]
}

interface Row {
  keys: readonly string[]
  does: string
}

/** The key map of places: groups of one title together, and neighbours that say the same in one row. What has no key is left out. */
export function keyGroups(places: readonly ActionPlace<never>[]): KeyGroup[] {
  const groups = new Map<string, Row[]>()
  for (const { title: heading, actions, also = [] } of places.flatMap((place) => place.groups)) {
    const title = tell(heading)
    const rows = groups.get(title) ?? []
    groups.set(title, rows)
    for (const row of [...actions, ...also]) {
      const does = tell(row.does)
      const keys = keyWords(row)
      const last = rows.at(-1)
      if (last?.does === does) rows[rows.length - 1] = { keys: [...last.keys, ...keys], does }
      else if (keys.length > 0) rows.push({ keys, does })
    }
  }
  return [...groups].map(([title, rows]) => ({ title, rows })).filter(({ rows }) => rows.length > 0)
}
