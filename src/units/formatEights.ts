import { type Counts, EIGHT } from '#units/units.ts'

/**
 * A length in counts as it is said: 64 → "8 eights", 68 → "8 eights + 4", 4 → "4 counts".
 * In three and six the unit is six counts, called a six: pass 6.
 */
export function formatEights(counts: Counts, unit: Counts = EIGHT): string {
  const name = unit === 6 ? 'six' : 'eight'
  const whole = Math.trunc(counts / unit)
  const rest = counts - whole * unit
  if (whole === 0) return `${rest} ${rest === 1 ? 'count' : 'counts'}`
  const plural = name === 'six' ? 'sixes' : 'eights'
  return `${whole} ${whole === 1 ? name : plural}${rest === 0 ? '' : ` + ${rest}`}`
}

/** The same, short, as it is typed into a field: 64 → "8", 68 → "8+4", 4 → "0+4". */
export function formatEightsInput(counts: Counts, unit: Counts = EIGHT): string {
  const whole = Math.trunc(counts / unit)
  const rest = counts - whole * unit
  return rest === 0 ? String(whole) : `${whole}+${rest}`
}
