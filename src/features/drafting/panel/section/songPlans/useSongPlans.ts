import { useEffect } from 'react'
import type { SongPlan } from '#plan/songPlans/songPlan.ts'
import { useApp, useAppStore } from '#store/useApp.ts'

/** What was planned for songs elsewhere, kept up to date while it is shown; null until it is found. */
export function useSongPlans(): readonly SongPlan[] | null {
  const store = useAppStore()
  const plans = useApp((state) => state.songPlans)
  const taught = useApp((state) => state.taught)
  const versions = useApp((state) => state.versions)
  const savedRides = useApp((state) => state.savedRides)
  const open = useApp((state) => state.ride?.id)
  // biome-ignore lint/correctness/useExhaustiveDependencies: it looks again when any of these is another
  useEffect(() => void store.getState().wantSongPlans(), [store, taught, versions, savedRides, open])
  return plans
}
