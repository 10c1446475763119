import * as v from 'valibot'
import { contentRevision } from '#plan/contentRevision.ts'
import type { Ride } from '#plan/model.ts'
import { parseRide } from '#plan/parseRide.ts'
import { LIMITS } from '#plan/schema.ts'

/** The version of kept versions this build writes. */
export const CURRENT_VERSION = 1

/**
 * A ride as it stood at one moment: kept under a name by whoever works on it, or by the
 * program when it was handed over or came in, so that what comes back later can be compared
 * with what went out. Never in a link.
 */
export interface Version {
  id: string
  /** The ride it is a version of. */
  rideId: string
  kind: 'named' | 'sent' | 'received'
  /** What it was called, or the title it came in under. */
  name: string
  /** Milliseconds since 1970. */
  at: number
  /** `contentRevision` of the ride. */
  revision: string
  /** The id under which it came in. */
  cameAs?: string
  ride: Ride
}

/** A version as it is listed. */
export type VersionHead = Omit<Version, 'ride'>

const headSchema = v.object({
  version: v.literal(CURRENT_VERSION),
  id: v.pipe(v.string(), v.minLength(1), v.maxLength(4 * LIMITS.id)),
  rideId: v.pipe(v.string(), v.minLength(1), v.maxLength(LIMITS.id)),
  kind: v.picklist(['named', 'sent', 'received']),
  name: v.pipe(v.string(), v.maxLength(LIMITS.line)),
  at: v.pipe(v.number(), v.finite()),
  cameAs: v.optional(v.pipe(v.string(), v.maxLength(LIMITS.id))),
  ride: v.unknown(),
})

/** A version of a ride as it stands now. */
export function versionOf(ride: Ride, about: Omit<Version, 'ride' | 'revision'>): Version {
  return { ...about, revision: contentRevision(ride), ride }
}

/** A version as text to keep. Its revision is not in it: it follows from the ride. */
export function writeVersion({ revision: _revision, ...version }: Version): string {
  return JSON.stringify({ version: CURRENT_VERSION, ...version })
}

/** Reads such a value; null where it is none, is of a version to come, or holds a ride that does not open. Never throws. */
export function readVersion(value: unknown): Version | null {
  const read = v.safeParse(headSchema, value)
  if (!read.success) return null
  const { version: _version, ride, cameAs, ...head } = read.output
  const parsed = parseRide(ride)
  return parsed.ok ? versionOf(parsed.ride, { ...head, ...(cameAs !== undefined && { cameAs }) }) : null
}
