import { ago, moment } from '#words/forms.ts'
import { words } from '#words/words.ts'

const MINUTE = 60_000
const HOUR = 60 * MINUTE
const DAY = 24 * HOUR

/**
 * When a ride was last changed, in words short enough for a list: "just now", "12 minutes ago",
 * "3 hours ago", "yesterday", "4 days ago", and from a week on the date. Both instants are
 * milliseconds since 1970; an instant in the future (a clock set back) counts as just now.
 */
export function changedWords(changedAt: number, now: number): string {
  const age = now - changedAt
  if (age < MINUTE) return words.start.justNow
  if (age < HOUR) return ago(Math.floor(age / MINUTE), 'minute')
  if (age < DAY) return ago(Math.floor(age / HOUR), 'hour')
  if (age < 7 * DAY) return ago(Math.floor(age / DAY), 'day')
  return moment(changedAt, { dateStyle: 'long' })
}
