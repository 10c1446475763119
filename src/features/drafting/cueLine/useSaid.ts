import { useEffect, useMemo } from 'react'
import { type SaidCue, saidIn } from '#engine/cues/completion/saidIn.ts'
import { useApp, useAppStore } from '#store/useApp.ts'

/** Every cue this leader has, in the language of the open ride: of this ride first, then of the others from the latest to the oldest. Those are looked through when it is first asked, one after another. */
export function useSaid(): readonly SaidCue[] {
  const store = useAppStore()
  const ride = useApp((state) => state.ride)
  const searched = useApp((state) => state.searched)
  const savedRides = useApp((state) => state.savedRides)
  useEffect(() => void store.getState().searchRides(), [store])
  const elsewhere = useMemo(
    () => savedRides.flatMap(({ id }) => (id === ride?.id ? [] : (searched.get(id)?.said ?? []))),
    [savedRides, searched, ride?.id],
  )
  return useMemo(() => {
    const language = ride?.language ?? 'en'
    return [...(ride ? saidIn(ride) : []), ...elsewhere].filter((cue) => cue.language === language)
  }, [ride, elsewhere])
}
