import type { Bpm, Counts, Seconds } from '#units/units.ts'

/** Words that can be said in a number of counts at a rate in words a minute. */
export const wordsThatFit = (wordsPerMinute: number, counts: Counts, bpm: Bpm): number => (wordsPerMinute / 60) * ((counts * 60) / bpm)

/** Rate advised for radio, words a minute. Source: Rodero E, Text & Talk 2012;32(3):391-411. */
export const RADIO_RATE: readonly [from: number, to: number] = [160, 180]

/**
 * Moderate rates of spoken English, words a minute, with their mean.
 * Source: Tauroza S, Allison D, Applied Linguistics 1990;11(1):90-105 (from memory).
 */
export const SPEECH_RATES = {
  lecture: { from: 125, to: 160, mean: 140 },
  interview: { from: 160, to: 210, mean: 190 },
  conversation: { from: 190, to: 230, mean: 210 },
} as const

/** Counts before the change at which a basic call stands. Source: group-exercise instructor course, transitions lesson. */
export const CALL_PLACE: readonly [from: Counts, to: Counts] = [2, 4]

/**
 * How fast a leader speaks at a strain: calmly at their own rate, slower from strain 7 and
 * again from 8.5, in the ratio of 1.8 and 1.5 to 2.3 words a second (common practice).
 */
export function wordsPerSecond(wordsPerMinute: number, strain: number): number {
  const calm = wordsPerMinute / 60
  if (strain >= 8.5) return calm * (1.5 / 2.3)
  return strain >= 7 ? calm * (1.8 / 2.3) : calm
}

/** Time of a breath around a call (common practice). */
const BREATH: Seconds = 0.4

/** Seconds a number of words takes at a rate: words ÷ rate + 0.4 s; nothing for no words. */
export const speechSeconds = (words: number, perSecond: number): Seconds => (words === 0 ? 0 : words / perSecond + BREATH)
