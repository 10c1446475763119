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

/** The constants speech is timed by. */
export interface SpeechRules {
  wordsPerSecond: number
  wordsPerSecondWorking: number
  wordsPerSecondHard: number
  workingStrain: number
  breathlessStrain: number
  speechPause: Seconds
}

/**
 * How fast a leader speaks at a strain, in words a second: calmly at their own rate, slower
 * when working and again when breathless, in the proportion of the constants (2.3, 1.8 and
 * 1.5 words a second, common practice).
 */
export function wordsPerSecond(wordsPerMinute: number, strain: number, rules: SpeechRules): number {
  const calm = wordsPerMinute / 60
  if (strain >= rules.breathlessStrain) return calm * (rules.wordsPerSecondHard / rules.wordsPerSecond)
  return strain >= rules.workingStrain ? calm * (rules.wordsPerSecondWorking / rules.wordsPerSecond) : calm
}

/** Seconds a number of words takes: words ÷ rate + the pause after them; nothing for no words. */
export const speechSeconds = (words: number, perSecond: number, rules: SpeechRules): Seconds =>
  words === 0 ? 0 : words / perSecond + rules.speechPause
