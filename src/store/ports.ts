import type { RideReport } from '#engine/report.ts'
import type { Level, Ride } from '#plan/model.ts'

/** What the store needs of the world; the app supplies it, tests supply their own. */
export interface Ports {
  /** Plans a whole ride, once for every new ride object; the engine's own unless given. */
  compute?: (ride: Ride) => RideReport
  newId: () => string
  /** Where rides are kept; null while nothing can be kept. */
  shelf: RideShelf | null
}

/** A saved ride as the shelf lists it. */
export interface SavedRide {
  id: string
  title: string
  /** Absent where the ride cannot be read. */
  level?: Level
  slotMinutes?: number
  /** Milliseconds since 1970. */
  updated: number
  /** Set when the ride cannot be read: it is kept, and this says why. */
  problem?: string
}

export type LoadedRide = { ok: true; ride: Ride } | { ok: false; sentence: string; details: string[] }

/** Saved rides, as far as the store is concerned. */
export interface RideShelf {
  list: () => Promise<SavedRide[]>
  load: (id: string) => Promise<LoadedRide>
  save: (ride: Ride) => Promise<unknown>
  remove: (id: string) => Promise<void>
}
