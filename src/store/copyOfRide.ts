import { revisionOf } from '#plan/document/revisionOf.ts'
import { descendedFrom, lineageOf } from '#plan/merge/lineage.ts'
import type { Ride } from '#plan/model.ts'

/** The same ride under an id of its own, which knows what it was made from, but is a ride for itself. */
export function copyOfRide(ride: Ride, id: string): Ride {
  const { ancestors: _ancestors, ...content } = ride
  return { ...content, id, parent: { rideId: ride.id, revision: revisionOf(ride) } }
}

/** The beginning of another ride: all there is to ride, under a title of its own, and no time of a class. */
export function newRideFrom(ride: Ride, { id, title }: { id: string; title: string }): Ride {
  const { startsAt: _startsAt, ...content } = copyOfRide(ride, id)
  return { ...content, title }
}

/** A copy of a ride that came in, which can be told apart from it when either comes back changed. */
export const keptCopy = (came: Ride, id: string): Ride => descendedFrom(copyOfRide(came, id), lineageOf(came))
