import type { Seconds } from '#units/units.ts'

const QUARTERS = ['', '¼', '½', '¾'] as const

/** A length as a watch gives it at a glance: "25 s" under three quarters of a minute, then quarter minutes: "2¼ min". */
export function minutesWords(seconds: Seconds): string {
  if (seconds > 0 && seconds < 42.5) return `${Math.max(5, Math.round(seconds / 5) * 5)} s`
  const quarters = Math.round(seconds / 15)
  const whole = Math.floor(quarters / 4)
  const part = QUARTERS[quarters % 4]!
  return `${whole === 0 && part !== '' ? '' : whole}${part} min`
}
