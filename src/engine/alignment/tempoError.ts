import type { Bpm, Counts, Seconds } from '#units/units.ts'

/**
 * How far the end of a stretch moves when its tempo is wrong by some per cent: by as many per
 * cent of its length. Negative for a tempo that is faster than thought. Arithmetic.
 */
export const driftSeconds = (length: Seconds, errorPercent: number): Seconds => (length * errorPercent) / 100

/** Counts by which the plan runs ahead of the music after a time, when it assumes another tempo than the song has. Arithmetic. */
export const driftCounts = (trueBpm: Bpm, assumedBpm: Bpm, seconds: Seconds): Counts => ((assumedBpm - trueBpm) * seconds) / 60
