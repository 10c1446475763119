import { vi } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { RideShelf } from '#store/ports.ts'
import { countedIds } from './smallRide.ts'

/** A store over the real engine that counts how often a ride was computed. */
export function aStore(shelf: RideShelf | null = null) {
  const compute = vi.fn(computeRide)
  const store = createAppStore({ compute, newId: countedIds('new'), shelf })
  return { store, compute, state: () => store.getState() }
}
