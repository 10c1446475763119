import { parseClock } from '#units/parseClock.ts'
import { type Parsed, refused } from '#units/parsed.ts'
import { type NumberRules, parseNumber } from '#units/parseNumber.ts'
import type { Seconds } from '#units/units.ts'

/** How the fields of a ride and its leaders are read. */

const SLOT: NumberRules = {
  subject: 'The slot',
  min: 1,
  max: 360,
  decimals: 1,
  unit: 'minutes',
  suffixes: ['minutes', 'min', 'm'],
  example: '45',
}
export const parseSlot = (text: string): Parsed<number> => parseNumber(text, SLOT)

const RATE: NumberRules = {
  subject: 'A speaking rate',
  min: 40,
  max: 400,
  unit: 'words a minute',
  suffixes: ['words a minute', 'wpm'],
  example: '140',
}
export const parseRate = (text: string): Parsed<number> => parseNumber(text, RATE)

/** Briefing and clear-up are part of the slot: up to an hour. */
export function parsePause(text: string): Parsed<Seconds> {
  const seconds = parseClock(text)
  return seconds.ok && seconds.value > 3600 ? refused('At most an hour.') : seconds
}
