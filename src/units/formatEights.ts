import type { Counts } from '#units/units.ts'
import { EIGHT } from '#units/units.ts'

/** A length in counts, short, as it is typed into a field: 64 → "8", 68 → "8+4", 4 → "0+4". */
export function formatEightsInput(counts: Counts, unit: Counts = EIGHT): string {
  const whole = Math.trunc(counts / unit)
  const rest = counts - whole * unit
  return rest === 0 ? String(whole) : `${whole}+${rest}`
}
