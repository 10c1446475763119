import { parseClock } from '#units/parseClock.ts'
import { type Parsed, refused } from '#units/parsed.ts'
import { type NumberRules, parseNumber } from '#units/parseNumber.ts'
import type { Seconds } from '#units/units.ts'
import { type Refusal, say } from '#words/said.ts'

/** How the fields of a ride and its leaders are read. */

const SLOT: NumberRules = {
  of: 'classLength',
  min: 1,
  max: 360,
  decimals: 1,
  suffixes: ['minutes', 'minuten', 'min', 'm'],
}
export const parseSlot = (text: string): Parsed<number> => parseNumber(text, SLOT)

const RATE: NumberRules = {
  of: 'speechRate',
  min: 40,
  max: 400,
  suffixes: ['words per minute', 'words a minute', 'wpm'],
}
export const parseRate = (text: string): Parsed<number> => parseNumber(text, RATE)

/** Welcome and wipe-down are part of the class: up to an hour. */
export function parsePause(text: string): Parsed<Seconds, Refusal> {
  const seconds = parseClock(text)
  return seconds.ok && seconds.value > 3600 ? refused(say('panelsRide.atMostAnHour')) : seconds
}
