import type { PlayedCadence } from '#engine/played.ts'
import type { Rpm } from '#units/units.ts'

/** One cadence throughout, or a straight ramp from one to another. */
export const steadyCadence = (from: Rpm, to: Rpm = from): Extract<PlayedCadence, { kind: 'turning' }> => ({
  kind: 'turning',
  from,
  to,
  least: Math.min(from, to),
  most: Math.max(from, to),
  mean: (from + to) / 2,
})
