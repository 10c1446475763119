import type { Ride } from '#plan/model.ts'
import { seal } from './envelope.ts'
import { pack as packFormat1 } from './format1/pack.ts'
import { needsFormat2, pack as packFormat2 } from './format2/pack.ts'
import { shareable } from './shareable.ts'

/**
 * The whole ride as text for the fragment of an address, without its #.
 *
 * Holds `shareable(ride)` and nothing else; equal rides give equal text. Letters, digits,
 * `-`, `_` and one dot, so that no mail program or chat breaks it. Written in the oldest format
 * that holds it all, so that it opens in older builds too.
 * @param ride a ride as `parseRide` returns it
 */
export function encodeLink(ride: Ride): string {
  const shared = shareable(ride)
  return needsFormat2(shared) ? seal(packFormat2(shared), 2) : seal(packFormat1(shared), 1)
}
