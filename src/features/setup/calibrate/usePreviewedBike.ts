import { useEffect } from 'react'
import { setBike } from '#plan/commands/setBike.ts'
import type { Bike } from '#plan/model.ts'
import { useAppStore } from '#store/useApp.ts'

/**
 * Shows the ride as it would be on a bike for as long as it is not taken.
 * @returns takes it, as one undo step
 */
export function usePreviewedBike(bike: Bike | null): () => void {
  const store = useAppStore()
  useEffect(() => {
    const { ride, preview } = store.getState()
    if (ride && bike) preview(setBike(ride, bike))
    return () => store.getState().dropPreview()
  }, [store, bike])
  return () => {
    const { ride, commitPreview, run } = store.getState()
    if (!commitPreview() && ride && bike) run(setBike(ride, bike))
  }
}
