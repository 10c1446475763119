import { LIMITS } from '#plan/document/schema.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { parseClock } from '#units/parseClock.ts'
import { type Parsed, refused } from '#units/parsed.ts'
import { type NumberRules, parseNumber } from '#units/parseNumber.ts'
import type { Bpm, Seconds } from '#units/units.ts'
import { type Refusal, say } from '#words/said.ts'

/** How the figures of a song and of its section are read and written, wherever they are typed. */

const TEMPO: NumberRules = {
  of: 'tempo',
  min: LIMITS.tempo.low,
  max: LIMITS.tempo.high,
  decimals: 3,
  suffixes: ['beats per minute', 'beats a minute', 'bpm'],
}
export const parseTempo = (text: string): Parsed<Bpm> => parseNumber(text, TEMPO)
export const formatTempo = (bpm: Bpm): string => formatNumber(bpm, 2)

const FIRST_BEAT: NumberRules = {
  of: 'firstBeat',
  min: 0,
  max: 120,
  decimals: 3,
  suffixes: ['seconds', 's'],
}
export const parseFirstBeat = (text: string): Parsed<Seconds> => parseNumber(text, FIRST_BEAT)

const LEAD_IN: NumberRules = {
  of: 'leadIn',
  min: -600,
  max: 600,
  decimals: 1,
  suffixes: ['seconds', 's'],
}
export const parseLeadIn = (text: string): Parsed<Seconds> => parseNumber(text, LEAD_IN)

/** As short and as long as a song may be typed, pasted or read: a class to one long mix has a song of its own length. */
export const SONG_SECONDS = { shortest: 1, longest: LIMITS.seconds } as const

/** A song's length, from one second to six hours. */
export function parseSongLength(text: string): Parsed<Seconds, Refusal> {
  const seconds = parseClock(text)
  if (!seconds.ok) return seconds
  const inside = seconds.value >= SONG_SECONDS.shortest && seconds.value <= SONG_SECONDS.longest
  return inside ? seconds : refused(say('songPlaces.songLength'))
}

/** The nearest length a song may have. */
export const withinSongLength = (seconds: Seconds): Seconds => Math.min(SONG_SECONDS.longest, Math.max(SONG_SECONDS.shortest, seconds))

/** Whole seconds as a clock; a length with a fraction keeps it. */
export function formatSongLength(seconds: Seconds): string {
  if (Number.isInteger(seconds)) return formatClock(seconds)
  const whole = Math.floor(seconds)
  return `${formatClock(whole)}${formatNumber(seconds - whole, 2).replace(/^0/, '')}`
}
