import { contentRevision } from '#plan/contentRevision.ts'
import type { Ride } from '#plan/model.ts'
import type { VersionHead } from '#plan/version.ts'
import { type Lineage, lineageOf } from './lineage.ts'

/** Where the version two rides have in common is found: one of the two itself, a kept version, or nowhere. */
export type Base = { kind: 'mine' } | { kind: 'theirs' } | { kind: 'version'; id: string } | { kind: 'unknown' }

/** The versions of a ride that were handed over, latest first. */
export const sentOf = (rideId: string, heads: readonly VersionHead[]): string[] =>
  newestFirst(heads.filter((head) => head.rideId === rideId && head.kind === 'sent')).map(({ revision }) => revision)

const newestFirst = (heads: readonly VersionHead[]): VersionHead[] => heads.toSorted((a, b) => b.at - a.at)

/**
 * Which of one's own rides a ride that came in belongs to: the one it is a state of, the one
 * it was copied from, or one that has a version in common with it or was itself copied from
 * it. Undefined where there is none.
 *
 * @param own ids of one's own rides, the one that is open first
 */
export function ownRideOf(theirs: Ride, own: readonly string[], heads: readonly VersionHead[]): string | undefined {
  const lineage = new Set(lineageOf(theirs))
  const shared = newestFirst(heads).filter(({ revision, cameAs }) => lineage.has(revision) || cameAs === theirs.id)
  const candidates = [theirs.id, theirs.parent?.rideId, ...shared.map(({ rideId }) => rideId)]
  return candidates.find((id) => id !== undefined && own.includes(id))
}

/**
 * The latest version a ride of one's own and one that came in have in common, as far as it
 * is still kept. Where their lineages say nothing, it is what last came in of that same ride:
 * its later states were made from it.
 */
export function findBase(mine: Ride, theirs: Ride, heads: readonly VersionHead[]): Base {
  const known = new Set<string>([...lineageOf(mine), ...sentOf(mine.id, heads)])
  for (const revision of lineageOf(theirs)) {
    if (!known.has(revision)) continue
    const found = held(revision, mine, theirs, heads)
    if (found) return found
  }
  const ancestors: Lineage = mine.ancestors ?? []
  const cameLast = newestFirst(heads).find(
    ({ rideId, kind, cameAs, revision }) =>
      rideId === mine.id && kind === 'received' && cameAs === theirs.id && ancestors.includes(revision),
  )
  return cameLast ? { kind: 'version', id: cameLast.id } : { kind: 'unknown' }
}

function held(revision: string, mine: Ride, theirs: Ride, heads: readonly VersionHead[]): Base | undefined {
  if (revision === contentRevision(mine)) return { kind: 'mine' }
  if (revision === contentRevision(theirs)) return { kind: 'theirs' }
  const head = heads.find((each) => each.revision === revision)
  return head && { kind: 'version', id: head.id }
}
