import type { Ride } from '#plan/model.ts'
import { revisionOf } from '#plan/revisionOf.ts'

/** The same ride under an id of its own, which knows what it was made from. */
export const copyOfRide = (ride: Ride, id: string): Ride => ({ ...ride, id, parent: { rideId: ride.id, revision: revisionOf(ride) } })
