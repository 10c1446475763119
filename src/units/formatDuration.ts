import type { Seconds } from '#units/units.ts'
import { formatClock } from './formatClock.ts'

/**
 * A length as it is said: "24 s" under a minute, "3:51" from a minute on. Rounded to whole
 * seconds like {@link formatClock}, so 59.5 s reads "1:00", never "60 s".
 */
export function formatDuration(seconds: Seconds): string {
  const clock = formatClock(seconds)
  const short = /^(−?)0:0?(\d+)$/.exec(clock)
  return short ? `${short[1]}${short[2]} s` : clock
}
