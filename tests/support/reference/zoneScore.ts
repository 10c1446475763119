/** Weights a minute of five bands of maximal heart rate, each ten per cent wide from 50 % up. */
export const ZONE_WEIGHTS: readonly number[] = [1, 2, 3, 4, 5]

/**
 * A yardstick; the page shows none. Summated zone score: minutes in each band times its weight; below 50 % nothing counts.
 * The weights have no physiological derivation.
 * Source: Edwards S, The Heart Rate Monitor Book, 1993.
 */
export const zoneScore = (minutes: readonly number[]): number =>
  minutes.reduce((sum, length, zone) => sum + length * (ZONE_WEIGHTS[zone] ?? 0), 0)
