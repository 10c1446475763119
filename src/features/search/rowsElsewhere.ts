import { foundBy } from '#plan/search/folded.ts'
import type { SearchedRide } from '#store/searchSlice.ts'
import type { AppState, AppStore } from '#store/state.ts'
import { day, moment } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { goToRide } from './goTo.ts'
import type { Row } from './row.ts'

type Kept = Pick<AppState, 'savedRides' | 'searched' | 'taught' | 'ride' | 'received' | 'place'>

/** The saved rides, the latest first. */
export function rowsOfRides(store: AppStore, state: Kept): Row[] {
  const whenAndWhere = placeOf(state)
  return state.savedRides
    .filter(({ problem }) => problem === undefined)
    .map(({ id, title, updated }) => ({
      id: `ride:${id}`,
      group: 'rides',
      label: title || words.names.untitled,
      where: whenAndWhere(id, updated),
      text: foundBy(title),
      go: () => void goToRide(store, id),
    }))
}

/** What other rides have, ride by ride, the latest first. */
export function rowsElsewhere(store: AppStore, state: Kept, made: WeakMap<SearchedRide, Row[]>): Row[] {
  const whenAndWhere = placeOf(state)
  const here = state.received || state.place === 'start' ? null : state.ride?.id
  return state.savedRides.flatMap(({ id }) => {
    const searched = state.searched.get(id)
    if (!searched || id === here) return []
    const rows = made.get(searched) ?? rowsOf(store, searched, whenAndWhere(id, searched.updated))
    made.set(searched, rows)
    return rows
  })
}

function rowsOf(store: AppStore, { id, title, uses }: SearchedRide, whenAndWhere: string): Row[] {
  const where = `${title || words.names.untitled} · ${whenAndWhere}`
  return uses.map(({ kind, text, also, spot, times }, index) => ({
    id: `use:${id}:${index}`,
    group: 'elsewhere',
    label: text,
    ...(also && { also }),
    where,
    note: times > 1 ? `${words.search.kind({ kind })} ${words.search.times({ count: times })}` : words.search.kind({ kind }),
    text: foundBy(also ? `${text} ${also}` : text),
    go: () => void goToRide(store, id, spot),
  }))
}

/** When a ride was taught last, else changed, and where that was. */
function placeOf({ taught, searched }: Kept): (id: string, updated: number) => string {
  const last = new Map(taught.toSorted((a, b) => (a.day < b.day ? -1 : 1)).map((each) => [each.rideId, each]))
  return (id, updated) => {
    const led = last.get(id)
    const when = led
      ? words.search.taughtOn({ day: day(led.day) })
      : words.search.changedOn({ day: moment(updated, { dateStyle: 'long' }) })
    const place = searched.get(id)?.location ?? led?.room
    return place ? `${when} · ${place}` : when
  }
}
