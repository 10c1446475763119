import { revisionOf } from '#plan/document/revisionOf.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { shareable } from '#plan/link/shareable.ts'
import type { Ride } from '#plan/model.ts'
import { joinLineages } from './joinLineages.ts'

/**
 * The editions a ride holds all of, a later one always before those it was made from. An
 * edition is a ride as it went out; its name (`editionOf`) is drawn from what it says and from
 * what it was made from, so that a ride made again what it once was is another edition. It grows in three ways: by handing the ride over (`handedOver` names what
 * was), by keeping a copy (`copiedFrom`), and by taking changes in (`mergedWith`). Two people
 * who pass a ride back and forth therefore always have an edition in common, the last that
 * either has had from the other, and need nobody to keep count.
 */
type Lineage = readonly string[]

/** Names a ride as it goes out: the same for whoever has it, whatever is private to each. */
export function editionOf(ride: Ride): string {
  const { parent: _parent, ...going } = shareable(ride)
  return revisionOf({ ...going, id: '' })
}

/** What a ride is and holds, latest first. */
export const lineageOf = (ride: Ride): string[] => [editionOf(ride), ...(ride.ancestors ?? [])]

/** The ride with a lineage put before its own, as far back as a document goes. */
export function descendedFrom(ride: Ride, lineage: Lineage): Ride {
  const ancestors = joinLineages(lineage, ride.ancestors ?? []).slice(0, LIMITS.ancestors)
  return ancestors.length === 0 ? ride : { ...ride, ancestors }
}

/**
 * The ride as it goes out: it names the editions of it that went out before, for the others
 * may have those. Unchanged since the last time it is that same edition.
 *
 * @param sent the editions that went out, latest first
 */
export function handedOver(ride: Ride, sent: Lineage): Ride {
  const again = descendedFrom(ride, sent.slice(1))
  return sent.length > 0 && editionOf(again) === sent[0] ? again : descendedFrom(ride, sent)
}

/** My ride after theirs was taken in: it holds all theirs holds. */
export const mergedWith = (merged: Ride, theirs: Ride): Ride => descendedFrom(merged, lineageOf(theirs))
