import type { Ride } from '#plan/model.ts'
import { seal } from './envelope.ts'
import { pack } from './format1/pack.ts'
import { shareable } from './shareable.ts'

/**
 * The whole ride as text for the fragment of an address, without its #.
 *
 * Holds `shareable(ride)` and nothing else; equal rides give equal text. Letters, digits,
 * `-`, `_` and one dot, so that no mail program or chat breaks it.
 * @param ride a ride as `parseRide` returns it
 */
export const encodeLink = (ride: Ride): string => seal(pack(shareable(ride)))
