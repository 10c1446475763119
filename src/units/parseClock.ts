import type { Seconds } from '#units/units.ts'
import { type Parsed, parsed, refused } from './parsed.ts'

const FORM = 'Write minutes and seconds, such as 3:45, or seconds, such as 45.'

/**
 * A length or a time as people write it, in seconds: "3:45", "3:45.5", "1:02:05", "45",
 * "45 s", "3 min", "3m45s", "3′45″". A bare number is seconds. Seconds, and minutes after
 * hours, stay under 60: "3:75" is a slip of the finger, not 4:15.
 */
export function parseClock(text: string): Parsed<Seconds> {
  const trimmed = text.trim().toLowerCase().replace(/,/g, '.')
  if (trimmed === '') return refused(FORM)
  return parseColons(trimmed) ?? parseWords(trimmed) ?? refused(FORM)
}

function parseColons(text: string): Parsed<Seconds> | null {
  const match = /^(?:(\d{1,3}):)?(\d{1,3}):(\d{1,2}(?:\.\d*)?)$/.exec(text)
  if (!match) return null
  const hours = Number(match[1] ?? 0)
  const minutes = Number(match[2])
  const seconds = Number(match[3])
  if (seconds >= 60) return refused('Seconds after the colon run from 00 to 59.')
  if (match[1] !== undefined && minutes >= 60) return refused('Minutes after the hours run from 00 to 59.')
  if (/:\d(?:\.\d*)?$/.test(text)) return refused('Write two figures for the seconds after the colon, such as 3:05.')
  return parsed(hours * 3600 + minutes * 60 + seconds)
}

function parseWords(text: string): Parsed<Seconds> | null {
  const match =
    /^(?:(\d+(?:\.\d+)?)\s*(?:m|min|mins|minutes?|['′’])\.?)?\s*(?:(\d+(?:\.\d*)?|\.\d+)\s*(?:s|sec|secs|seconds?|["″”]|'')?\.?)?$/.exec(
      text,
    )
  if (!match || (match[1] === undefined && match[2] === undefined)) return null
  return parsed(Number(match[1] ?? 0) * 60 + Number(match[2] ?? 0))
}
