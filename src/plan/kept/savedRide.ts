import type { Level, Ride } from '#plan/model.ts'
import type { Text } from '#words/said.ts'

/** A saved ride as it is listed. */
export interface SavedRide {
  id: string
  title: string
  /** Absent where the ride cannot be read. */
  level?: Level
  slotMinutes?: number
  /** Milliseconds since 1970; 0 when it cannot be read. */
  updated: number
  /** Set when the ride cannot be read: it is kept, and this says why. */
  problem?: Text
}

/** A saved ride opened, or why it could not be. */
export type LoadedRide = { ok: true; ride: Ride } | { ok: false; sentence: Text; details: Text[] }
