import type { Seconds } from '#units/units.ts'

/** Absorbs float drift, so that a time computed as 22.4999999999 s rounds as 22.5 s does. */
const DRIFT = 1e-6

/**
 * A time or length as minutes and seconds: 379.2 → "6:19"; from one hour on "1:02:05".
 * Rounded to whole seconds, half up (0.5 → "0:01"); a negative time is rounded by its
 * magnitude and carries a true minus, which what rounds to zero does not.
 */
export function formatClock(seconds: Seconds): string {
  const whole = Math.floor(Math.abs(seconds) + 0.5 + DRIFT)
  const sign = seconds < 0 && whole > 0 ? '−' : ''
  const pad = (value: number) => String(value).padStart(2, '0')
  const hours = Math.floor(whole / 3600)
  const minutes = Math.floor(whole / 60) % 60
  const tail = pad(whole % 60)
  return hours > 0 ? `${sign}${hours}:${pad(minutes)}:${tail}` : `${sign}${minutes}:${tail}`
}
