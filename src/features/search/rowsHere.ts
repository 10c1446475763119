import type { BoundAction } from '#actions/actionBoard.ts'
import { constantGroups } from '#engine/constantGroups.ts'
import { constantsOf } from '#engine/constants.ts'
import { foundBy } from '#plan/search/folded.ts'
import { thingsIn } from '#plan/search/things.ts'
import type { AppState, AppStore } from '#store/state.ts'
import { clock, number } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
import { goTo } from './goTo.ts'
import type { Row } from './row.ts'

/** What can be done at the moment; what cannot be done now stands last, with why. */
export function rowsOfActions(actions: readonly BoundAction[]): Row[] {
  const rows = actions.flatMap(({ id, name, does, keys, possible, do: act }): Row[] => {
    const answer = possible()
    if (answer === false) return []
    const label = tell(name)
    const also = tell(does)
    const row: Row = { id: `action:${id}`, group: 'actions', label, text: foundBy(label), note: keys[0] }
    if (also !== label) row.also = also
    return answer === true ? [{ ...row, go: act }] : [{ ...row, blocked: true, why: tell(answer) }]
  })
  return [...rows.filter(({ blocked }) => !blocked), ...rows.filter(({ blocked }) => blocked)]
}

/** Whether one is at the ride that is open; among all rides it is one of them. */
export const isAtRide = ({ place, shown }: Pick<AppState, 'place' | 'shown'>): boolean => shown !== null && place !== 'start'

/** All of the ride that is open. */
export function rowsOfRide(store: AppStore, { shown }: Pick<AppState, 'shown'>): Row[] {
  if (!shown) return []
  return thingsIn(shown).map(({ kind, text, also, where, spot, times }, index) => {
    const label = tell(text)
    const kindWords = words.search.kind({ kind })
    return {
      id: `here:${index}`,
      group: 'here',
      label,
      ...(also && { also }),
      ...(where !== undefined && { where: tell(where) }),
      note: times > 1 ? `${kindWords} ${words.search.times({ count: times })}` : kindWords,
      text: foundBy(also ? `${label} ${also}` : label),
      go: () => goTo(store, { kind: 'spot', spot }),
    }
  })
}

/** What the engine noticed of it, but what is hidden as intentional. */
export function rowsOfChecks(store: AppStore, { shown, shownReport }: Pick<AppState, 'shown' | 'shownReport'>): Row[] {
  const aside = new Set(shown?.setAside)
  return (shownReport?.findings ?? [])
    .filter(({ id }) => !aside.has(id))
    .map(({ id, text, at, sectionId, blockId }) => ({
      id: `check:${id}`,
      group: 'checks',
      label: tell(text),
      note: sectionId === undefined && blockId === undefined ? words.checkList.ofRide : clock(at),
      text: foundBy(tell(text)),
      go: () => goTo(store, { kind: 'finding', id }),
    }))
}

/** The songs kept apart from rides. */
export const rowsOfSongs = (store: AppStore, { songs }: Pick<AppState, 'songs'>): Row[] =>
  songs.map(({ id, song: { title, artist } }) => ({
    id: `song:${id}`,
    group: 'songs',
    label: title,
    ...(artist && { also: artist }),
    text: foundBy(`${title} ${artist ?? ''}`),
    go: () => goTo(store, { kind: 'song', id }),
  }))

/** The numbers of the studio, and the moves it does not do; they are a ride's own, so there must be one. */
export function rowsOfRules(store: AppStore, { shown }: Pick<AppState, 'shown'>): Row[] {
  const { rules, search } = words
  const values = constantsOf(shown ?? {})
  const row = (name: string, label: string, rest: Partial<Row>): Row => ({
    id: `rule:${name}`,
    group: 'rules',
    label,
    text: foundBy(label),
    ...rest,
    ...(shown ? { go: () => goTo(store, { kind: 'rule', name }) } : { blocked: true, why: search.openRideFirst }),
  })
  return [
    ...constantGroups().flatMap(({ group, names }) =>
      names.map((name) => row(name, rules.label({ name }), { where: rules.group({ group }), note: number(values[name], 3) })),
    ),
    row('avoidMoves', rules.avoidHeading, { where: shown?.avoidMoves?.join(', ') }),
  ]
}
