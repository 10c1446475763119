import { numberWords } from '#engine/speech/german/numberWords.ts'
import type { Effort, Seconds } from '#units/units.ts'

/** Seconds a spoken time may be off before riders feel told wrong; the rule on cues allows a little more. */
const OFF: Seconds = 2.5

/** A length as leaders say it: to five seconds up to a minute, then to half a minute, with "etwa" where that is not close. */
export function sayLength(seconds: Seconds): string {
  const rounded = seconds < 57.5 ? 5 * Math.max(1, Math.round(seconds / 5)) : 15 * Math.round(seconds / 15)
  const about = Math.abs(rounded - seconds) > Math.max(OFF, seconds * 0.07) ? 'etwa ' : ''
  return about + lengthWords(rounded)
}

function lengthWords(seconds: Seconds): string {
  if (seconds < 60) return `${numberWords(seconds)} Sekunden`
  const minutes = Math.floor(seconds / 60)
  const rest = seconds % 60
  const whole = minutes === 1 ? 'eine Minute' : `${numberWords(minutes)} Minuten`
  if (rest === 0) return whole
  if (rest === 30) return `${minutes === 1 ? 'anderthalb' : `${numberWords(minutes)}einhalb`} Minuten`
  return `${whole} ${numberWords(rest)}`
}

/** "dreißig": seconds to the nearest five, without the unit. */
export const bareSeconds = (seconds: Seconds): string => numberWords(5 * Math.max(1, Math.round(seconds / 5)))

/** "acht von zehn"; a half between two is told as both: "sechs bis sieben von zehn". */
export function sayEffort(effort: Effort): string {
  const low = Math.floor(effort)
  return `${effort - low >= 0.25 ? `${numberWords(low)} bis ${numberWords(low + 1)}` : numberWords(low)} von zehn`
}

/** "einmal", "zweimal", "dreimal". */
export const sayTimes = (count: number): string => (count === 1 ? 'einmal' : `${numberWords(count)}mal`)
