import type { Seconds } from '#units/units.ts'

/**
 * How far the end of a stretch moves when its tempo is wrong by some per cent: by as many per
 * cent of its length. Negative for a tempo that is faster than thought. Arithmetic.
 */
export const driftSeconds = (length: Seconds, errorPercent: number): Seconds => (length * errorPercent) / 100
