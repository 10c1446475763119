import { type Parsed, parsed, refused } from './parsed.ts'
import type { Problem } from './problem.ts'

const NOT_WALL_CLOCK: Problem = { kind: 'notWallClock' }

/** A time of day as "HH:MM" in 24 hours, from "18:30", "6.30pm", "6 pm", "1830" or "18h30". */
export function parseWallClock(text: string): Parsed<string> {
  const match = /^(\d{1,2})(?:[:.h]?(\d{2}))?\s*(?:h|uhr)?\s*(am|pm|a\.m\.|p\.m\.)?$/i.exec(text.trim())
  if (!match || (match[2] === undefined && match[3] === undefined)) return refused(NOT_WALL_CLOCK)
  const half = match[3]?.toLowerCase().replaceAll('.', '')
  const hours = Number(match[1])
  const minutes = Number(match[2] ?? 0)
  if (minutes > 59 || hours > (half ? 12 : 23) || (half && hours === 0)) return refused(NOT_WALL_CLOCK)
  const day = half ? (hours % 12) + (half === 'pm' ? 12 : 0) : hours
  return parsed(`${String(day).padStart(2, '0')}:${String(minutes).padStart(2, '0')}`)
}
