import { createContext, type ReactNode, useCallback, useContext, useEffect, useEffectEvent, useLayoutEffect, useState } from 'react'
import { useAppStore } from '#store/useApp.ts'
import { tell } from '#words/words.ts'
import type { ActionPlace, Ground } from './action.ts'
import { type ActionBoard, type BoundAction, createActionBoard, type Focus } from './actionBoard.ts'

/** Null where no keys are listened for. */
const BoardContext = createContext<ActionBoard | null>(null)

/** Gives everything inside it the board, and the board the page's keys. */
export function ActionBoardProvider({ children }: { children: ReactNode }) {
  const store = useAppStore()
  const [board] = useState(() => createActionBoard((why) => store.getState().announce(tell(why))))
  useEffect(() => {
    // On the document: after the fields' own handlers, and before those that a drag adds for as long as it lasts.
    document.addEventListener('keydown', board.press)
    return () => document.removeEventListener('keydown', board.press)
  }, [board])
  return <BoardContext.Provider value={board}>{children}</BoardContext.Provider>
}

/**
 * Has a place's actions done by their keys while the component is drawn.
 *
 * @param groundAt what they are done on for an element that has the focus, or, for null, for what is selected
 */
export function usePlaceActions<On extends Ground>(place: ActionPlace<On>, groundAt: (focus: Focus) => On | null): void {
  const board = useContext(BoardContext)
  const latest = useEffectEvent(groundAt)
  // Before it is painted: what is seen can be done.
  useLayoutEffect(() => board?.post(place, (focus) => latest(focus)), [board, place])
}

/**
 * What can be done at the moment, the nearest first: on what has the focus, else on what is selected.
 *
 * @returns asks anew at every call
 */
export function useActionsAt(): (focus: Focus) => BoundAction[] {
  const board = useContext(BoardContext)
  return useCallback(
    (focus: Focus) => {
      const near = board?.actionsAt(focus) ?? []
      const ids = new Set(near.map(({ id }) => id))
      return [...near, ...(board?.actionsAt(null) ?? []).filter(({ id }) => !ids.has(id))]
    },
    [board],
  )
}
