import { useCallback, useState } from 'react'
import type { Ride } from '#plan/model.ts'
import { useApp, useAppStore } from '#store/useApp.ts'

/** What there is to say of a change besides what it shows, for as long as the ride is as that change left it. */
export function useNoteOnRide(): [string | null, (note: string | null) => void] {
  const store = useAppStore()
  const ride = useApp((state) => state.ride)
  const [noted, setNoted] = useState<{ ride: Ride | null; note: string } | null>(null)
  const setNote = useCallback((note: string | null) => setNoted(note === null ? null : { ride: store.getState().ride, note }), [store])
  return [noted !== null && noted.ride === ride ? noted.note : null, setNote]
}
