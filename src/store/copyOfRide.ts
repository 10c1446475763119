import { descendedFrom, editionOf } from '#plan/merge/lineage.ts'
import type { Ride } from '#plan/model.ts'
import { revisionOf } from '#plan/revisionOf.ts'

/** The same ride under an id of its own, which knows what it was made from. */
export const copyOfRide = (ride: Ride, id: string): Ride => ({ ...ride, id, parent: { rideId: ride.id, revision: revisionOf(ride) } })

/** A copy of a ride that came in, which can be told apart from it when either comes back changed. */
export const keptCopy = (came: Ride, id: string): Ride => descendedFrom(copyOfRide(came, id), [editionOf(came)])
