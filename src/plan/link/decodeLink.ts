import type { ParsedRide } from '#plan/parseRide.ts'
import { rideInText } from './rideInText.ts'

/** The ride of a link, or what is wrong with it, in words; `rideInText` without the rest of what it tells. */
export function decodeLink(text: string): ParsedRide {
  const read = rideInText(text)
  return read.ok ? { ok: true, ride: read.ride } : { ok: false, problems: read.problems }
}
