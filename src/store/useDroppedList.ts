import { useLayoutEffect } from 'react'
import type { ListPlace } from './listSlice.ts'
import { useApp, useAppStore } from './useApp.ts'

/**
 * Hands a list of songs that was dropped on the page to the one who takes lists here, as soon as it is there.
 *
 * @param onText the same function at every drawing
 */
export function useDroppedList(place: ListPlace, onText: (text: string) => void): void {
  const store = useAppStore()
  const dropped = useApp((state) => state.droppedList)
  useLayoutEffect(() => {
    const text = dropped && store.getState().takeList(place)
    if (text !== null) onText(text)
  }, [store, place, dropped, onText])
}
