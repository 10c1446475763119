import { useEffect } from 'react'
import { useApp, useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'

/** What the ride was made from, and the way there while it is kept on this device. */
export function ParentNote() {
  const store = useAppStore()
  const parentId = useApp((state) => state.shown?.parent?.rideId)
  const parent = useApp((state) => state.savedRides.find(({ id }) => id === parentId))
  const readOnly = useApp((state) => state.received !== null)
  // The list is read where rides are chosen; a ride opened by a reload has not been there.
  useEffect(() => {
    if (parentId !== undefined) void store.getState().refreshSavedRides()
  }, [store, parentId])
  if (parent?.slotMinutes === undefined || readOnly) return null
  return (
    <p className="panel-where">
      <button type="button" className="panel-link" onClick={() => void store.getState().openSaved(parent.id)}>
        {words.panelsRide.madeFrom({ title: parent.title || words.names.untitled, minutes: parent.slotMinutes })}
      </button>
    </p>
  )
}
