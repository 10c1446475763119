import type { Effort } from '#units/units.ts'

/**
 * How a share of the oxygen-uptake reserve (0–1) reads as effort: straight between these
 * points, 10 above. Our own mapping, laid on the class bounds of the ACSM guidelines
 * (light from 30 %, moderate from 40 %, vigorous from 60 %, near-maximal from 90 %).
 */
export const EFFORT_OF_RESERVE: readonly (readonly [share: number, effort: Effort])[] = [
  [0, 0],
  [0.3, 2],
  [0.4, 3],
  [0.6, 5],
  [0.9, 9],
  [1, 10],
]

/** Index of the stretch of the mapping a share lies in; the last index stands for everything above 1. */
export function stretchOf(share: number): number {
  let i = 0
  while (i < EFFORT_OF_RESERVE.length - 1 && share >= EFFORT_OF_RESERVE[i + 1]![0]) i++
  return i
}

/** The stretch's line: effort = base + rise × (share − from). */
export function lineOf(stretch: number): { from: number; base: Effort; rise: number } {
  const [from, base] = EFFORT_OF_RESERVE[stretch]!
  const next = EFFORT_OF_RESERVE[stretch + 1]
  return { from, base, rise: next === undefined ? 0 : (next[1] - base) / (next[0] - from) }
}

/** The share of the reserve that reads as an effort; the inverse, 1 from effort 10 on. */
export function reserveOfEffort(effort: Effort): number {
  if (effort <= 0) return 0
  for (const [i, [share, value]] of EFFORT_OF_RESERVE.entries()) {
    const next = EFFORT_OF_RESERVE[i + 1]
    if (next === undefined) return share
    if (effort < next[1]) return share + ((effort - value) * (next[0] - share)) / (next[1] - value)
  }
  return 1
}
