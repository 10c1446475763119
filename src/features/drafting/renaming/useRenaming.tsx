import { type ReactNode, type RefObject, useCallback, useContext, useEffect, useState } from 'react'
import { isReadOnly } from '#store/placeSlice.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { DraftKeeping, DraftScope } from '#ui/draftKeeping.ts'
import { words } from '#words/words.ts'
import { namingOf } from './naming.ts'
import { RenameField } from './RenameField.tsx'

interface Renamed {
  id: string
  stop: HTMLElement | null
}

/** What is pressed twice to be renamed: the name itself, and the head of a card, which may have no room for it. */
const NAMES = '.song-head b, .block header, .set-head'

/** How soon the second of two taps follows, in milliseconds. */
const TAPS_WITHIN = 400

/**
 * Renames what stands on the stage where it stands: by two presses of its name, and by whoever asks for it. Words that were
 * left in the field when the page ended open it again with them.
 *
 * @param root the place, within which the stage stands
 * @param focus gives the focus to a stop of the stage
 */
export function useRenaming(
  root: RefObject<HTMLElement | null>,
  focus: (id: string) => void,
): [rename: (id: string, stop: HTMLElement | null) => void, field: ReactNode] {
  const store = useAppStore()
  const keeper = useContext(DraftKeeping)
  const scope = useContext(DraftScope)
  const readOnly = useApp(isReadOnly)
  const [renamed, setRenamed] = useState<Renamed | null>(null)
  const rename = useCallback((id: string, stop: HTMLElement | null) => setRenamed({ id, stop }), [])

  useEffect(() => {
    const place = root.current
    if (!place) return
    const stopUnder = ({ target }: Event) => (target as Element).closest(NAMES)?.closest<HTMLElement>('[data-stage-stop]') ?? null
    const twice = (event: MouseEvent) => {
      const stop = stopUnder(event)
      if (!stop?.dataset.id || event.shiftKey || event.ctrlKey || event.metaKey || isReadOnly(store.getState())) return
      // A song's head fits its song where two presses are about anything else of it.
      event.preventDefault()
      rename(stop.dataset.id, stop)
    }
    // Not every browser makes a double press of two taps.
    let tapped: { stop: HTMLElement | null; at: number } = { stop: null, at: 0 }
    const tap = (event: MouseEvent) => {
      if ((event as PointerEvent).pointerType !== 'touch') return
      const stop = stopUnder(event)
      const isSecond = stop !== null && stop === tapped.stop && event.timeStamp - tapped.at < TAPS_WITHIN
      tapped = { stop: isSecond ? null : stop, at: event.timeStamp }
      if (isSecond) twice(event)
    }
    const listeners = new AbortController()
    const { signal } = listeners
    place.addEventListener('dblclick', twice, { signal })
    place.addEventListener('click', tap, { signal })
    return () => listeners.abort()
  }, [root, store, rename])

  useEffect(() => {
    const { ride, selection } = store.getState()
    const id = selection.ids[0] ?? selection.sectionId
    const naming = ride && id !== null && selection.ids.length < 2 ? namingOf(ride, id) : null
    if (!naming || id === null) return
    const left = keeper?.left(`${scope} ${words.renaming.label({ name: naming.name })}`, naming.value) ?? null
    if (left !== null) rename(id, null)
  }, [store, keeper, scope, rename])

  return [
    rename,
    renamed && !readOnly && (
      <RenameField
        key={renamed.id}
        {...renamed}
        onClose={(goesBack) => {
          setRenamed(null)
          if (goesBack) focus(renamed.id)
        }}
      />
    ),
  ]
}
