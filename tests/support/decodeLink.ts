import type { Problem } from '#plan/document/parseRide.ts'
import type { Ride } from '#plan/model.ts'

type Decoded = { ok: true; ride: Ride } | { ok: false; problems: Problem[] }

import { rideInText } from '#plan/link/rideInText.ts'

/** The ride of a link, or what is wrong with it, in words; `rideInText` without the rest of what it tells. */
export function decodeLink(text: string): Decoded {
  const read = rideInText(text)
  return read.ok ? { ok: true, ride: read.ride } : { ok: false, problems: read.problems }
}
