import type { PlayedCadence } from '#engine/played.ts'
import type { Rpm } from '#units/units.ts'

/**
 * The two cadences a block is said to run between: the end of its range it starts nearer to, then the other. Of a ramp
 * these are its first and last; of a tempo that rises and falls back, where it starts and how far it goes.
 */
export function paceRange({ from, least, most }: Extract<PlayedCadence, { kind: 'turning' }>): [Rpm, Rpm] {
  return from - least <= most - from ? [least, most] : [most, least]
}
