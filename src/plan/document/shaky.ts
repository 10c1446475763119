import { patched } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'
import { idsOf } from '#plan/places.ts'

/** The ride without marks on blocks it no longer has; the same ride where there are none. */
export function withoutGoneMarks(ride: Ride): Ride {
  if (!ride.shaky) return ride
  const present = new Set(idsOf(ride))
  const left = ride.shaky.filter((id) => present.has(id))
  return left.length === ride.shaky.length ? ride : patched(ride, { shaky: left.length > 0 ? left : undefined })
}
