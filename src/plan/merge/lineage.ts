import { contentRevision } from '#plan/contentRevision.ts'
import type { Ride } from '#plan/model.ts'
import { LIMITS } from '#plan/schema.ts'

/**
 * The versions a ride holds all of, as content revisions, a later one always before those it
 * was made from. It grows in three ways: by handing the ride over (`handedOver` names what
 * was), by keeping a copy (`copiedFrom`), and by taking changes in (`mergedWith`). Two people
 * who pass a ride back and forth therefore always have a version in common, the last that
 * either has had from the other, and need nobody to keep count.
 */
export type Lineage = readonly string[]

/**
 * Two lineages as one that keeps the order of both. Where they tell nothing of each other's
 * entries, the first one's go first.
 */
export function joinLineages(first: Lineage, second: Lineage): string[] {
  const joined: string[] = []
  const [a, b] = [[...new Set(first)], [...new Set(second)]]
  while (a.length > 0 || b.length > 0) {
    // An entry the other list has further down comes after what stands there before it.
    const next = a.length > 0 && !b.slice(1).includes(a[0]!) ? a[0]! : b.length > 0 && !a.slice(1).includes(b[0]!) ? b[0]! : (a[0] ?? b[0])!
    joined.push(next)
    for (const list of [a, b]) if (list.includes(next)) list.splice(list.indexOf(next), 1)
  }
  return joined
}

/** What a ride is and holds, latest first. */
export const lineageOf = (ride: Ride): string[] => [contentRevision(ride), ...(ride.ancestors ?? [])]

/** The ride with a lineage put before its own, as far back as a document goes. */
export function descendedFrom(ride: Ride, lineage: Lineage): Ride {
  const ancestors = joinLineages(lineage, ride.ancestors ?? []).slice(0, LIMITS.ancestors)
  return ancestors.length === 0 ? ride : { ...ride, ancestors }
}

/** The ride as it goes out: it names the versions of it that went out before, for the others may have those. */
export function handedOver(ride: Ride, sent: Lineage): Ride {
  const revision = contentRevision(ride)
  return descendedFrom(
    ride,
    sent.filter((earlier) => earlier !== revision),
  )
}

/** My ride after theirs was taken in: it holds all theirs holds. */
export const mergedWith = (merged: Ride, theirs: Ride): Ride => descendedFrom(merged, lineageOf(theirs))

/**
 * The latest version two rides have in common, by the lineage of either; undefined where
 * none is known. Of two that neither was made from, the one that theirs names first.
 */
export function commonRevision(mine: Lineage, theirs: Lineage): string | undefined {
  const known = new Set(mine)
  return theirs.find((revision) => known.has(revision))
}
