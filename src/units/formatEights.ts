import { type Counts, EIGHT } from '#units/units.ts'
import { plural } from './plural.ts'

/**
 * A length in counts as it is said: 64 → "8 eights", 68 → "8 eights + 4", 4 → "4 counts".
 * In three and six the unit is six counts, called a six: pass 6.
 */
export function formatEights(counts: Counts, unit: Counts = EIGHT): string {
  const whole = Math.trunc(counts / unit)
  const rest = counts - whole * unit
  if (whole === 0) return plural(rest, 'count')
  const said = unit === 6 ? plural(whole, 'six', 'sixes') : plural(whole, 'eight')
  return `${said}${rest === 0 ? '' : ` + ${rest}`}`
}

/** The same, short, as it is typed into a field: 64 → "8", 68 → "8+4", 4 → "0+4". */
export function formatEightsInput(counts: Counts, unit: Counts = EIGHT): string {
  const whole = Math.trunc(counts / unit)
  const rest = counts - whole * unit
  return rest === 0 ? String(whole) : `${whole}+${rest}`
}
