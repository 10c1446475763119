import { numberWords } from '#engine/speech/english/numberWords.ts'
import type { Effort, Seconds } from '#units/units.ts'

/** Seconds a spoken time may be off before riders feel told wrong; the rule on cues allows a little more. */
const OFF: Seconds = 2.5

/**
 * A length as leaders say it: to five seconds up to a minute, then to a quarter of a minute, with "about" where that is
 * not close.
 */
export function sayLength(seconds: Seconds): string {
  const rounded = seconds < 57.5 ? 5 * Math.max(1, Math.round(seconds / 5)) : 15 * Math.round(seconds / 15)
  const about = Math.abs(rounded - seconds) > Math.max(OFF, seconds * 0.07) ? 'about ' : ''
  return about + lengthWords(rounded)
}

function lengthWords(seconds: Seconds): string {
  if (seconds < 60) return `${numberWords(seconds)} seconds`
  const minutes = Math.floor(seconds / 60)
  const rest = seconds % 60
  const whole = minutes === 1 ? 'a minute' : `${numberWords(minutes)} minutes`
  if (rest === 0) return minutes === 1 ? 'one minute' : whole
  if (rest === 30) return minutes === 1 ? 'a minute and a half' : `${numberWords(minutes)} and a half minutes`
  return `${whole} ${rest === 15 ? 'fifteen' : 'forty-five'}`
}

/** "thirty", "thirty seconds" without the unit where it is under a minute. */
export const bareSeconds = (seconds: Seconds): string => numberWords(5 * Math.max(1, Math.round(seconds / 5)))

/** "an eight", "a six"; a half between two is told as both: "a six to seven". */
export function sayEffort(effort: Effort): string {
  const low = Math.floor(effort)
  const words = effort - low >= 0.25 ? `${numberWords(low)} to ${numberWords(low + 1)}` : numberWords(low)
  return `${/^eight|^eleven/.test(words) ? 'an' : 'a'} ${words}`
}

/** "once", "twice", "three times". */
export const sayTimes = (count: number): string => (count === 1 ? 'once' : count === 2 ? 'twice' : `${numberWords(count)} times`)
