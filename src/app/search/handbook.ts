import { ALL_PLACES } from '#app/actions/allPlaces.ts'
import { keyGroups } from '#app/actions/keyGroups.ts'
import { goTo } from '#features/search/goTo.ts'
import type { Row } from '#features/search/row.ts'
import { cautions } from '#features/start/cautions.ts'
import { foundBy } from '#plan/search/folded.ts'
import type { AppStore } from '#store/state.ts'
import { words } from '#words/words.ts'

/** The help there is: the cautions of the start page, and every shortcut. */
export function handbook(store: AppStore, openKeys: () => void): Row[] {
  const notes = cautions().map(
    ([name, text]): Row => ({
      id: `caution:${name}`,
      group: 'handbook',
      label: name,
      also: text,
      note: words.start.beforeClass,
      text: foundBy(`${name} ${text}`),
      go: () => goTo(store, { kind: 'caution', words: name }),
    }),
  )
  const shortcuts = keyGroups(ALL_PLACES).flatMap(({ title, rows }) =>
    rows.map(
      ({ keys, does }): Row => ({
        id: `shortcut:${title}:${does}`,
        group: 'handbook',
        label: does,
        where: `${words.actions.shortcuts} · ${title}`,
        note: keys[0],
        text: foundBy(does),
        go: () => {
          openKeys()
          goTo(store, { kind: 'shortcut', words: does })
        },
      }),
    ),
  )
  return [...notes, ...shortcuts]
}
