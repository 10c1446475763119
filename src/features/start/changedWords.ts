import { plural } from '#units/plural.ts'

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
  if (age < MINUTE) return 'just now'
  if (age < HOUR) return ago(Math.floor(age / MINUTE), 'minute')
  if (age < DAY) return ago(Math.floor(age / HOUR), 'hour')
  if (age < 2 * DAY) return 'yesterday'
  if (age < 7 * DAY) return ago(Math.floor(age / DAY), 'day')
  return new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }).format(changedAt)
}

const ago = (amount: number, unit: string): string => `${plural(amount, unit)} ago`
