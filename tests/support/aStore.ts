import { vi } from 'vitest'
import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { Ports, RideShelf } from '#store/ports.ts'
import { countedIds } from './smallRide.ts'

/** A store that counts how often a ride was computed; its reports are empty, one for each computation. */
export function aStore(shelf: RideShelf | null = null, demoRide?: Ports['demoRide']) {
  const compute = vi.fn((_ride: Ride) => ({}) as RideReport)
  const store = createAppStore({ compute, newId: countedIds('new'), shelf, demoRide })
  return { store, compute, state: () => store.getState() }
}
