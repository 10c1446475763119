import { wellFormed } from '#plan/document/plainCopy.ts'
import type { Ride } from '#plan/model.ts'

/** What stays with whoever keeps the ride. */
export const UNSHARED = ['privateNotes', 'setAside', 'shaky', 'riders'] as const satisfies readonly (keyof Ride)[]

/**
 * The part of a ride that may travel in a link: everything but the private notes, the
 * findings put aside, the blocks marked as shaky and the named riders. The receiver's own default riders take their place.
 *
 * A copy in the form a link gives back: no undefined properties, no −0, whole characters.
 */
export function shareable(ride: Ride): Ride {
  const shared = { ...ride }
  for (const key of UNSHARED) delete shared[key]
  return tidy(shared)
}

function tidy<T>(value: T): T
function tidy(value: unknown): unknown {
  if (typeof value === 'number') return value === 0 ? 0 : value
  if (typeof value === 'string') return wellFormed(value)
  if (Array.isArray(value)) return value.map(tidy)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, held]) => held !== undefined)
      .map(([key, held]) => [key, tidy(held)]),
  )
}
