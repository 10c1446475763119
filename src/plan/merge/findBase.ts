import type { VersionHead } from '#plan/kept/version.ts'
import type { Ride } from '#plan/model.ts'
import { editionOf, lineageOf } from './lineage.ts'

/** Where the edition two rides have in common is found: theirs is it, it is a kept version, or it is not known. */
type Base = { kind: 'theirs' } | { kind: 'version'; id: string } | { kind: 'unknown' }

/** The editions of a ride that were handed over, latest first. */
export const sentOf = (rideId: string, heads: readonly VersionHead[]): string[] =>
  newestFirst(heads.filter((head) => head.rideId === rideId && head.kind === 'sent')).map(({ edition }) => edition)

const newestFirst = (heads: readonly VersionHead[]): VersionHead[] => heads.toSorted((a, b) => b.at - a.at)

/**
 * Which of one's own rides a ride that came in belongs to: the one it is a state of, the one
 * it was copied from, or one that has an edition in common with it or was itself copied from
 * it. Undefined where there is none.
 *
 * @param own ids of one's own rides, the one that is open first
 */
export function ownRideOf(theirs: Ride, own: readonly string[], heads: readonly VersionHead[]): string | undefined {
  const lineage = new Set(lineageOf(theirs))
  const shared = newestFirst(heads).filter(({ edition, cameAs }) => lineage.has(edition) || cameAs === theirs.id)
  const candidates = [theirs.id, theirs.parent?.rideId, ...shared.map(({ rideId }) => rideId)]
  return candidates.find((id) => id !== undefined && own.includes(id))
}

/** Whether a ride of one's own says itself that one that came in belongs to it, where no version tells any more: it is a copy of it, or was made from an edition of it. */
export function isMadeFrom(mine: Ride, theirs: Ride): boolean {
  const lineage = new Set(lineageOf(theirs))
  return mine.parent?.rideId === theirs.id || (mine.ancestors ?? []).some((edition) => lineage.has(edition))
}

/**
 * The latest edition a ride of one's own and one that came in have in common, as far as it is
 * still kept. Where their lineages do not reach far enough back, it is what last came in of
 * that same ride: its later states were made from it.
 */
export function findBase(mine: Ride, theirs: Ride, heads: readonly VersionHead[]): Base {
  const ancestors = mine.ancestors ?? []
  const known = new Set([...ancestors, ...sentOf(mine.id, heads)])
  if (known.has(editionOf(theirs))) return { kind: 'theirs' }
  const kept = new Map(heads.map(({ edition, id }) => [edition, id]))
  const common = theirs.ancestors?.find((edition) => known.has(edition) && kept.has(edition))
  if (common !== undefined) return { kind: 'version', id: kept.get(common)! }
  const cameLast = newestFirst(heads).find(
    ({ rideId, kind, cameAs, edition }) => rideId === mine.id && kind === 'received' && cameAs === theirs.id && ancestors.includes(edition),
  )
  return cameLast ? { kind: 'version', id: cameLast.id } : { kind: 'unknown' }
}
