import type { Seconds } from '#units/units.ts'

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
