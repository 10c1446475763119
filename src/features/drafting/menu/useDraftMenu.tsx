import { lazy, type ReactNode, type RefObject, Suspense, useCallback, useEffect, useState } from 'react'
import { useActionsAt } from '#actions/ActionBoardProvider.tsx'
import type { BoundAction } from '#actions/actionBoard.ts'
import type { AskedMenu } from '#features/drafting/actions/draftGround.ts'
import { useAppStore } from '#store/useApp.ts'
import { isTyping } from '#ui/isTyping.ts'
import { watchRest } from './watchRest.ts'

const DraftMenu = lazy(() => import('./DraftMenu.tsx').then((module) => ({ default: module.DraftMenu })))

/** What takes a press of the stage. */
const STAGE = '.stage-scroller'

/**
 * The menu of the stage: by the pointer's second button, by a finger that rests, and by whoever asks for it. What it opens on
 * is selected, unless it is among what is selected already.
 *
 * @param root the place, within which the stage stands
 */
export function useDraftMenu(root: RefObject<HTMLElement | null>): [open: (asked: AskedMenu) => void, menu: ReactNode] {
  const store = useAppStore()
  const actionsAt = useActionsAt()
  const [asked, setAsked] = useState<(AskedMenu & { actions: readonly BoundAction[] }) | null>(null)

  const open = useCallback(
    (next: AskedMenu) => {
      const { selection, selectItem, selectSection } = store.getState()
      const { stageStop: kind, id } = next.stop?.dataset ?? {}
      if (kind === 'section' && id) {
        if (selection.ids.length > 0 || selection.sectionId !== id) selectSection(id)
      } else if (id && !selection.ids.includes(id)) selectItem(id)
      next.stop?.focus({ preventScroll: true })
      setAsked({ ...next, actions: actionsAt(next.stop) })
    },
    [store, actionsAt],
  )

  useEffect(() => {
    const { current: place } = root
    if (!place) return
    const openAt = (pressed: Element, at: { x: number; y: number }) => {
      const stop = pressed.closest<HTMLElement>('[data-stage-stop]')
      const section =
        pressed.closest<HTMLElement>('[data-open-section]')?.dataset.openSection ?? pressed.closest<HTMLElement>('.song')?.dataset.sectionId
      if (!stop && section) store.getState().selectSection(section)
      else if (!stop) store.getState().clearSelection()
      open({ stop, at, which: 'all' })
    }
    const second = (event: MouseEvent) => {
      const pressed = event.target as Element
      // The menu's own key makes this event as well, with the menu open already.
      if (pressed.closest('[role="menu"]')) return event.preventDefault()
      if (!pressed.closest(STAGE) || isTyping(pressed)) return
      event.preventDefault()
      if (!document.querySelector('[role="menu"]')) openAt(pressed, { x: event.clientX, y: event.clientY })
    }
    let before: readonly string[] = []
    const remember = () => {
      before = store.getState().selection.ids
    }
    // Ahead of the drag that a resting finger begins: it selects what it holds by itself.
    place.addEventListener('pointerdown', remember, true)
    place.addEventListener('contextmenu', second)
    const unwatch = watchRest(place, STAGE, {
      rested: (pressed, at) => {
        const id = pressed.closest<HTMLElement>('[data-stage-stop]')?.dataset.id
        if (id && before.includes(id)) store.getState().selectItems(before)
        if (!document.querySelector('[role="menu"]')) openAt(pressed, at)
      },
      wentOn: () => setAsked(null),
    })
    return () => {
      place.removeEventListener('pointerdown', remember, true)
      place.removeEventListener('contextmenu', second)
      unwatch()
    }
  }, [root, store, open])

  const close = useCallback(() => setAsked(null), [])
  return [
    open,
    asked && (
      <Suspense fallback={null}>
        <DraftMenu asked={asked} actions={asked.actions} onClose={close} />
      </Suspense>
    ),
  ]
}
