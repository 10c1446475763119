import type { Seconds } from '#units/units.ts'

/** Mean of values held for a time each; 0 over no time at all. The order of the values does not matter. */
export function timeWeightedMean(held: readonly { value: number; seconds: Seconds }[]): number {
  let area = 0
  let total = 0
  for (const { value, seconds } of held) {
    area += value * seconds
    total += seconds
  }
  return total > 0 ? area / total : 0
}
