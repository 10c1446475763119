import type { Seconds } from '#units/units.ts'

/** Seconds left as they are counted down: whole ones, the one that runs included, so that nought is never early. */
export const countdown = (seconds: Seconds): Seconds => Math.ceil(Math.max(0, seconds) - 1e-6)
