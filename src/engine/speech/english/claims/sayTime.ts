import type { Form } from '#engine/cues/claims/claim.ts'
import { tokensOf } from '#engine/cues/tokens.ts'
import { formatClock } from '#units/formatClock.ts'
import type { Seconds } from '#units/units.ts'
import { numberAt } from './numberAt.ts'
import { sayWhole } from './sayWhole.ts'

/** Longer than this is told in minutes. */
const MOST_SECONDS = 110

/** A half minute this near is told instead: nobody says "sixty-four seconds". */
const NEAR: Seconds = 4

/** To the second up to twenty-four, then to five, from three minutes on to half a minute, as people tell times. */
function rounded(seconds: Seconds): Seconds {
  const half = 30 * Math.round(seconds / 30)
  if (half > 0 && Math.abs(seconds - half) <= NEAR) return half
  const step = seconds >= 180 ? 30 : seconds >= 25 ? 5 : 1
  return Math.max(1, Math.round(seconds / step) * step)
}

/**
 * A time in the form another was said in; null where it cannot be said so, as "a full minute" cannot be thirty seconds.
 *
 * @param old how the other time was said
 */
export function sayTime(seconds: Seconds, { figures, unit, adjective }: Form & { as: 'duration' }, old: string): string | null {
  const value = rounded(seconds)
  if (unit === 'clock') return formatClock(value)
  if (unit === 'bare') return value >= 5 && value <= MOST_SECONDS ? sayWhole(value, figures) : null
  if (adjective) return sayAdjective(value, figures, old)
  const lead = /^(?:another|the|this|next|last|final)\s+/i.exec(old)?.[0] ?? ''
  const middle = middleOf(old, lead.length)
  const asSeconds = unit !== 'minutes'
  if (middle && !/more|extra|other|additional/i.test(middle) && asSeconds !== value % 60 > 0) return null
  const between = middle ? `${middle} ` : ''
  if (unit === 'short') return sayShort(value, old)
  if (value % 60 === 0 && !(asSeconds && value === 60)) {
    const minutes = value / 60
    if (lead && minutes === 1) return `${lead}${between}minute`
    return `${lead}${sayWhole(minutes, figures)} ${between}${minutes === 1 ? 'minute' : 'minutes'}`
  }
  if (value <= MOST_SECONDS && !(value === 90 && !asSeconds))
    return `${lead}${sayWhole(value, figures)} ${between}${value === 1 ? 'second' : 'seconds'}`
  return middle || lead ? null : minutesAndHalf(value, figures, old)
}

const DESCRIBED = /\b(?:more|extra|full|whole|good|solid|other|additional)\b/i

/** What stands between a number and its unit: "more", "nice easy". */
function middleOf(old: string, from: number): string | undefined {
  const known = DESCRIBED.exec(old)?.[0]
  if (known) return known
  const tokens = tokensOf(old.slice(from))
  const number = numberAt(tokens, 0)
  const [first, last] = [number && tokens[number.next], tokens.at(-1)]
  return first && last && first.from < last.from && !/\band\b|\bof\b|\ba\b/i.test(old)
    ? old.slice(from + first.from, from + last.from).trim()
    : undefined
}

/** "a minute and a half", "two and a half minutes"; other rests in seconds. */
function minutesAndHalf(value: Seconds, figures: boolean, old: string): string | null {
  const minutes = Math.floor(value / 60)
  const rest = value % 60
  if (rest !== 30) return `${sayWhole(minutes, figures)} ${minutes === 1 ? 'minute' : 'minutes'} ${sayWhole(rest, figures)}`
  if (figures) return `${minutes}½ minutes`
  return minutes === 1 && /^an? /i.test(old) ? 'a minute and a half' : `${sayWhole(minutes, false)} and a half minutes`
}

/** "20s", "30 secs", "2 min", with the unit as it was written. */
function sayShort(value: Seconds, old: string): string | null {
  const match = /^(.*?)(\s*)(s|secs?)$/i.exec(old)
  return match && value <= MOST_SECONDS ? `${sayWhole(value, /\d/.test(match[1]!))}${match[2]}${match[3]}` : null
}

/** "thirty-second", "two-minute", as they stand before a noun. */
function sayAdjective(value: Seconds, figures: boolean, old: string): string | null {
  const joint = /-\s*(?:second|minute)$/i.test(old) ? '-' : ' '
  const whole = value % 60 === 0 && !(value === 60 && /second$/i.test(old))
  if (!whole && value > MOST_SECONDS) return null
  return `${sayWhole(whole ? value / 60 : value, figures)}${joint}${whole ? 'minute' : 'second'}`
}

/** Minutes of the day in twelve hours or in twenty-four: "6:34". */
export function sayWallClock(minute: number, of24: boolean): string {
  const hours = Math.floor(minute / 60) % 24
  return `${of24 ? hours : hours % 12 || 12}:${String(minute % 60).padStart(2, '0')}`
}
