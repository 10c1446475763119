import type { Seconds } from './units.ts'

/**
 * The time of day so long after another one, to the nearest minute and past midnight: "18:30" and
 * 1260 s → "18:51".
 *
 * @param clock "HH:MM" in 24 hours
 */
export function wallClockAfter(clock: string, seconds: Seconds): string {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number)
  const later = (hours * 60 + minutes + Math.round(seconds / 60)) % DAY
  const day = (later + DAY) % DAY
  return `${String(Math.floor(day / 60)).padStart(2, '0')}:${String(day % 60).padStart(2, '0')}`
}

const DAY = 24 * 60
