import type { Seconds } from '#units/units.ts'
import { type Parsed, parsed, refused } from './parsed.ts'
import type { Problem } from './problem.ts'

const NOT_CLOCK: Problem = { kind: 'notClock' }

/**
 * A length or a time as people write it, in seconds: "3:45", "3:45.5", "1:02:05", "45",
 * "45 s", "3 min", "3m45s", "3′45″". A bare number is seconds. Seconds, and minutes after
 * hours, stay under 60: "3:75" is a slip of the finger, not 4:15.
 */
export function parseClock(text: string): Parsed<Seconds> {
  const trimmed = text.trim().toLowerCase().replace(/,/g, '.')
  if (trimmed === '') return refused(NOT_CLOCK)
  return parseColons(trimmed) ?? parseWords(trimmed) ?? refused(NOT_CLOCK)
}

function parseColons(text: string): Parsed<Seconds> | null {
  const match = /^(?:(\d{1,3}):)?(\d{1,3}):(\d{1,2}(?:\.\d*)?)$/.exec(text)
  if (!match) return null
  const hours = Number(match[1] ?? 0)
  const minutes = Number(match[2])
  const seconds = Number(match[3])
  if (seconds >= 60) return refused({ kind: 'secondsOver' })
  if (match[1] !== undefined && minutes >= 60) return refused({ kind: 'minutesOver' })
  if (/:\d(?:\.\d*)?$/.test(text)) return refused({ kind: 'oneFigure' })
  return parsed(hours * 3600 + minutes * 60 + seconds)
}

function parseWords(text: string): Parsed<Seconds> | null {
  const match =
    /^(?:(\d+(?:\.\d+)?)\s*(?:m|min|mins|minutes?|minuten?|['′’])\.?)?\s*(?:(\d+(?:\.\d*)?|\.\d+)\s*(?:s|secs?|seconds?|sek|sekunden?|["″”]|'')?\.?)?$/.exec(
      text,
    )
  if (!match || (match[1] === undefined && match[2] === undefined)) return null
  return parsed(Number(match[1] ?? 0) * 60 + Number(match[2] ?? 0))
}
