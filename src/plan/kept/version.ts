import * as v from 'valibot'
import { contentRevision } from '#plan/document/contentRevision.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { editionOf } from '#plan/merge/lineage.ts'
import type { Ride } from '#plan/model.ts'

/** The form of kept versions this build writes. */
const CURRENT_VERSION = 1

/**
 * A ride as it stood at one moment: kept under a name by whoever works on it, or by the
 * program when it was handed over or came in, so that what comes back later can be compared
 * with what went out, or when it was taught, so that its songs can be ridden so again. Never in a link.
 */
export interface Version {
  id: string
  /** The ride it is a version of. */
  rideId: string
  kind: 'named' | 'sent' | 'received' | 'taught'
  /** What it was called, or the title it went out, came in or was taught under. */
  name: string
  /** Milliseconds since 1970. */
  at: number
  /** `editionOf` the ride. */
  edition: string
  /** The id under which it came in. */
  cameAs?: string
  ride: Ride
}

/** A version as it is listed. */
export type VersionHead = Omit<Version, 'ride'>

/** A version about to be kept, which is when it gets its time. */
export type NewVersion = Omit<Version, 'at'>

/** A ride as it stands, under a name. */
export const namedVersion = (ride: Ride, name: string, id: string): NewVersion => ({
  id,
  rideId: ride.id,
  kind: 'named',
  name: [...name].slice(0, LIMITS.line / 2).join(''),
  edition: editionOf(ride),
  ride,
})

/** A ride as it was handed over; handed over twice as it is, it is one version. */
export function sentVersion(ride: Ride): NewVersion {
  const edition = editionOf(ride)
  return { id: `${ride.id}.sent.${edition}`, rideId: ride.id, kind: 'sent', name: ride.title, edition, ride }
}

/** A ride as it came in, of which one's own is a copy or has taken changes. */
export function receivedVersion(came: Ride, rideId: string): NewVersion {
  const edition = editionOf(came)
  return { id: `${rideId}.received.${edition}`, rideId, kind: 'received', name: came.title, edition, cameAs: came.id, ride: came }
}

/** A ride as it was taught; taught twice as it is, it is one version. */
export function taughtVersion(ride: Ride): NewVersion {
  const id = taughtId(ride.id, contentRevision(ride))
  return { id, rideId: ride.id, kind: 'taught', name: ride.title, edition: editionOf(ride), ride }
}

/** The id under which a ride is kept as it was taught, by the revision that its log entry names. */
export const taughtId = (rideId: string, revision: string): string => `${rideId}.taught.${revision}`

const headSchema = v.object({
  version: v.literal(CURRENT_VERSION),
  id: v.pipe(v.string(), v.regex(/^[A-Za-z0-9][A-Za-z0-9._:-]*$/), v.maxLength(4 * LIMITS.id)),
  rideId: v.pipe(v.string(), v.minLength(1), v.maxLength(LIMITS.id)),
  kind: v.picklist(['named', 'sent', 'received', 'taught']),
  name: v.pipe(v.string(), v.maxLength(LIMITS.line)),
  at: v.pipe(v.number(), v.finite()),
  edition: v.pipe(v.string(), v.maxLength(LIMITS.name)),
  cameAs: v.optional(v.pipe(v.string(), v.maxLength(LIMITS.id))),
})

/** A version as a plain value to keep. */
export const writeVersion = (version: Version): object => ({ version: CURRENT_VERSION, ...version })

/** What is listed of such a value, its ride unread; null where it is none or is of a form to come. Never throws. */
export function readVersionHead(value: unknown): VersionHead | null {
  const read = v.safeParse(headSchema, value)
  if (!read.success) return null
  const { version: _version, cameAs, ...head } = read.output
  return { ...head, ...(cameAs !== undefined && { cameAs }) }
}

/** The whole of such a value; null where it is none or its ride does not open. Its edition is what the ride says it is. Never throws. */
export function readVersion(value: unknown): Version | null {
  const head = readVersionHead(value)
  const parsed = head && parseRide((value as { ride?: unknown }).ride)
  return parsed?.ok ? { ...head!, edition: editionOf(parsed.ride), ride: parsed.ride } : null
}
