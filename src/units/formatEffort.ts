import type { Effort } from '#units/units.ts'
import { formatNumber } from './formatNumber.ts'

/** A level of effort: 7 → "7", 7.5 → "7½", 0.5 → "½". */
export function formatEffort(effort: Effort): string {
  if (!Number.isInteger(effort * 2)) return formatNumber(effort, 1)
  const whole = Math.floor(effort)
  if (whole === effort) return String(whole)
  return whole === 0 ? '½' : `${whole}½`
}
