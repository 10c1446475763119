import type { Seconds } from '#units/units.ts'
import type { Utterance } from './utterance.ts'

/** The constants speech is timed by. */
export interface SpeechRules {
  wordsPerSecond: number
  wordsPerSecondWorking: number
  wordsPerSecondHard: number
  workingStrain: number
  breathlessStrain: number
  syllableSeconds: Seconds
  consonantSeconds: Seconds
  stopPause: Seconds
  commaPause: Seconds
  drawnOut: Seconds
  speechPause: Seconds
}

/** Words a second at which the lengths of syllables and pauses are told. */
const TOLD_AT = 140 / 60

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

/** Seconds a text takes from its first sound to its last, at a rate in words a second: all of it, pauses too, stretches as the rate falls. */
export function speakingSeconds({ syllables, consonants, stops, commas }: Utterance, perSecond: number, rules: SpeechRules): Seconds {
  if (syllables === 0) return 0
  const sounds = syllables * rules.syllableSeconds + consonants * rules.consonantSeconds + rules.drawnOut
  return ((sounds + stops * rules.stopPause + commas * rules.commaPause) * TOLD_AT) / perSecond
}

/** The same with the pause after it; nothing where nothing is said. */
export const speechSeconds = (utterance: Utterance, perSecond: number, rules: SpeechRules): Seconds =>
  utterance.syllables === 0 ? 0 : speakingSeconds(utterance, perSecond, rules) + rules.speechPause
