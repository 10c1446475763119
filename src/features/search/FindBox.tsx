import { useCombobox } from 'downshift'
import { Fragment, type KeyboardEvent, useEffect, useEffectEvent, useId, useLayoutEffect, useMemo, useState } from 'react'
import { useActionsAt } from '#actions/ActionBoardProvider.tsx'
import type { Press } from '#actions/action.ts'
import type { BoundAction } from '#actions/actionBoard.ts'
import { fitOf } from '#actions/keys/chord.ts'
import type { SearchedRide } from '#store/searchSlice.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { LiveRegion } from '#ui/LiveRegion.tsx'
import { words } from '#words/words.ts'
import { type Found, MOST, ranked } from './ranked.ts'
import type { Row } from './row.ts'
import { rowsElsewhere, rowsOfRides } from './rowsElsewhere.ts'
import { isAtRide, rowsOfActions, rowsOfChecks, rowsOfRide, rowsOfRules, rowsOfSongs } from './rowsHere.ts'
import './find.css'

interface Props {
  /** Help texts and shortcuts, as the page has them. */
  handbook: readonly Row[]
  /** What opened the box is not found in it. */
  ownAction: string
  /** Closes the box; done when the focus is back where it was. */
  onClose: () => void
}

/** Rows of the recent rides while nothing is typed. */
const RECENT = 5
/** Actions of one place while nothing is typed. */
const OF_ONE_PLACE = 4

/** One field, and under it what it finds, by heading: a press or Enter does it or goes there. */
export function FindBox({ handbook, ownAction, onClose }: Props) {
  const [query, setQuery] = useState('')
  const [turn, setTurn] = useState(0)
  // At once and not when there is time: Enter takes what the words typed so far have found.
  const sought = query.trim()
  const { actions, rows, texts } = useRows(handbook, ownAction)
  const found = useMemo(() => (sought === '' ? unasked(rows, actions) : ranked(rows, texts, sought)), [rows, texts, actions, sought])
  const items = found.flatMap((group) => group.items)
  const atRide = useApp(isAtRide)
  const unsearched = useApp((state) => state.unsearched)
  const id = useId()

  const choose = (row: Row | undefined, press: Press) => {
    if (!row) return
    // Why not is told once more: nothing else answers.
    if (!row.go) return setTurn((before) => before + 1)
    onClose()
    row.go(press)
  }
  const { getMenuProps, getInputProps, getItemProps, highlightedIndex } = useCombobox<Row>({
    id,
    items,
    isOpen: true,
    inputValue: query,
    selectedItem: null,
    itemToString: (row) => row?.label ?? '',
    itemToKey: (row) => row?.id,
    initialHighlightedIndex: 0,
    defaultHighlightedIndex: 0,
    // What is pressed is chosen here; the list neither closes nor chooses by itself, as when the field loses the focus.
    stateReducer: (state, { type, changes }) =>
      type === useCombobox.stateChangeTypes.InputBlur || type === useCombobox.stateChangeTypes.MenuMouseLeave ? state : changes,
  })
  const press = (event: KeyboardEvent<HTMLInputElement>) => {
    const native = event.nativeEvent as KeyboardEventOfList
    if (event.key === 'Escape') native.preventDownshiftDefault = true
    if (fitOf('Mod+K', event) === 'exact') {
      event.preventDefault()
      onClose()
    }
    if (event.key !== 'Enter' || native.isComposing) return
    native.preventDownshiftDefault = true
    event.preventDefault()
    choose(items[highlightedIndex], event)
  }
  const total = found.reduce((sum, group) => sum + group.total, 0)
  const { search } = words
  const said =
    sought === ''
      ? ''
      : items.length === 0
        ? search.nothing({ query: sought })
        : items.length < total
          ? search.countedSome({ shown: items.length, count: total })
          : search.counted({ count: total })
  const highlighted = items[highlightedIndex]
  let index = 0
  return (
    <div className="find">
      <div className="find-field ui-field">
        <input
          {...getInputProps({
            onChange: (event) => setQuery(event.currentTarget.value),
            onKeyDown: press,
            'aria-label': search.title,
            placeholder: search.field,
            autoComplete: 'off',
            spellCheck: false,
            enterKeyHint: 'go',
          })}
        />
        <p className="find-count">{sought !== '' && items.length > 0 ? said : ''}</p>
      </div>
      <div {...getMenuProps({ 'aria-label': search.results, className: 'find-list' })}>
        {found.map(({ group, items: shown, total: all }) => (
          // biome-ignore lint/a11y/useSemanticElements: a group of options in a list
          <div key={group} role="group" aria-labelledby={`${id}-${group}`} className="find-group">
            <div id={`${id}-${group}`} className="find-heading" role="presentation">
              {headingOf(group, sought, atRide)}
              {all > shown.length && sought !== '' && <span> {search.some({ shown: shown.length, total: all })}</span>}
            </div>
            {shown.map((row) => {
              const at = index++
              return (
                <div
                  key={row.id}
                  {...getItemProps({
                    item: row,
                    index: at,
                    className: 'find-row',
                    'aria-disabled': row.blocked === true,
                    onClick: (event) => {
                      ;(event.nativeEvent as MouseEventOfList).preventDownshiftDefault = true
                      choose(row, event)
                    },
                  })}
                >
                  <RowWords row={row} />
                </div>
              )
            })}
          </div>
        ))}
      </div>
      {sought !== '' && items.length === 0 && <p className="find-nothing">{said}</p>}
      {unsearched > 0 && <p className="find-looking">{search.looking({ left: unsearched })}</p>}
      <LiveRegion message={highlighted?.why ? `${said} ${highlighted.why}` : said} turn={turn} />
    </div>
  )
}

/** The library's own mark on an event it is to leave alone. */
type KeyboardEventOfList = globalThis.KeyboardEvent & { preventDownshiftDefault?: boolean }
type MouseEventOfList = globalThis.MouseEvent & { preventDownshiftDefault?: boolean }

function RowWords({ row: { label, also, where, note, why } }: { row: Row }) {
  return (
    <Fragment>
      <span className="find-words">
        <b>{label}</b>
        {also && <span className="find-quiet"> {also}</span>}
      </span>
      {note && <span className="find-note">{note}</span>}
      {(why ?? where) && <span className="find-where">{why ?? where}</span>}
    </Fragment>
  )
}

/** All that can be found, and what each is found by; made when the box is opened, and anew as rides are looked through. */
function useRows(handbook: readonly Row[], ownAction: string): { actions: readonly BoundAction[]; rows: Row[]; texts: string[] } {
  const store = useAppStore()
  const actionsAt = useActionsAt()
  // The box is not open yet when this is first drawn: what has the focus is what somebody was at.
  const [actions, setActions] = useState<readonly BoundAction[]>([])
  const ask = useEffectEvent(() => setActions(actionsAt(document.activeElement).filter(({ id }) => id !== ownAction)))
  useLayoutEffect(() => ask(), [])
  const [made] = useState(() => new WeakMap<SearchedRide, Row[]>())
  const savedRides = useApp((state) => state.savedRides)
  const searched = useApp((state) => state.searched)
  const taught = useApp((state) => state.taught)
  const songs = useApp((state) => state.songs)
  useEffect(() => {
    const { searchRides, refreshSongs, refreshTaught } = store.getState()
    void Promise.all([refreshSongs(), refreshTaught()]).then(searchRides)
  }, [store])
  const near = useMemo(() => {
    const state = store.getState()
    const doable = rowsOfActions(actions)
    const ofRide = isAtRide(state) ? [...rowsOfRide(store, state), ...rowsOfChecks(store, state)] : []
    return [...doable, ...ofRide, ...rowsOfRules(store, state), ...handbook]
  }, [store, actions, handbook])
  return useMemo(() => {
    const { ride, received, place } = store.getState()
    const kept = { savedRides, searched, taught, ride, received, place }
    const rows = [...near, ...rowsOfRides(store, kept), ...rowsOfSongs(store, { songs }), ...rowsElsewhere(store, kept, made)]
    return { actions, rows, texts: rows.map(({ text }) => text) }
  }, [store, actions, near, savedRides, searched, taught, songs, made])
}

/** Before anything is typed: the rides of late, and what can be done here. */
function unasked(rows: readonly Row[], actions: readonly BoundAction[]): Found<Row>[] {
  const rides = rows.filter(({ group }) => group === 'rides').slice(0, RECENT)
  const doable = new Map(rows.filter(({ group, blocked }) => group === 'actions' && !blocked).map((row) => [row.id, row]))
  const useful = new Map<string, Row[]>()
  for (const { id, place, keyOnly } of actions) {
    const row = doable.get(`action:${id}`)
    // Moving about is what keys and pointer are for; and no place fills the list alone.
    if (row && !keyOnly) useful.set(place.id, [...(useful.get(place.id) ?? []), row].slice(0, OF_ONE_PLACE))
  }
  const things = [...useful.values()].flat().slice(0, MOST)
  return [
    { group: 'rides' as const, items: rides, total: rides.length },
    { group: 'actions' as const, items: things, total: things.length },
  ].filter(({ total }) => total > 0)
}

function headingOf(group: Found<Row>['group'], sought: string, atRide: boolean): string {
  const { search } = words
  if (group === 'elsewhere' && !atRide) return search.group({ group: 'everywhere' })
  if (sought !== '') return search.group({ group })
  return group === 'rides' ? search.recent : search.useful
}
