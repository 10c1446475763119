import { SONG_SECONDS } from '#plan/songs/songRules.ts'
import { say, type Text } from '#words/said.ts'

export type Reading = { ok: true; value: number } | { ok: false; sentence: Text }

/** Ways to write a length; each begins and ends on its own, so they can be looked for inside a line too. */
const CLOCK = /(?:(\d{1,2}):)?(\d{1,3}):(\d{2}(?:\.\d{1,3})?)/
const PRIMES = /(\d{1,3})\s*['’′]\s*(\d{1,2})\s*(?:["”″]|['’′]{2})/
const ISO = /PT(?:(\d{1,2})H)?(?:(\d{1,3})M)?(?:(\d{1,3}(?:\.\d{1,3})?)S)?/
const WORDS =
  /(?:(\d{1,2})\s*h(?:ours?|rs?)?\s*)?(\d{1,3}(?:[.,]\d{1,3})?)\s*m(?:in(?:ute)?s?)?\b\.?(?:\s*(\d{1,2})\s*s(?:ec(?:ond)?s?)?\b\.?)?/
const MINUTES_SECONDS = /(?:(\d{1,2})\s*h\s*)?(\d{1,3})\s*m(?:in)?\s*(\d{1,2})\s*s?/
const SECONDS = /(\d{1,5}(?:[.,]\d{1,3})?)\s*s(?:ec(?:ond)?s?)?\b\.?/

/** Any length with something that says it is one: a colon, primes, a unit. */
const FORMS = [CLOCK, PRIMES, ISO, MINUTES_SECONDS, WORDS, SECONDS]
const SOME_LENGTH = FORMS.map((form) => `(?:${form.source.replaceAll(/\((?!\?)/g, '(?:')})`).join('|')

/** Finds lengths inside a line: not part of a longer number or word. */
export const LENGTH_IN_LINE = new RegExp(`(?<![\\p{L}\\p{N}:.,'’])(?:${SOME_LENGTH})(?![\\p{L}\\p{N}:'’])`, 'giu')

const WHOLE = {
  clock: whole(CLOCK),
  primes: whole(PRIMES),
  iso: whole(ISO),
  minutesSeconds: whole(MINUTES_SECONDS),
  words: whole(WORDS),
  seconds: whole(SECONDS),
}

function whole(form: RegExp): RegExp {
  return new RegExp(`^${form.source}$`, 'i')
}

/**
 * Reads a length written as 3:45, 1:02:03, 3'45", PT3M45S, 3m45s, 3 min 45 s, 3.5 min or 225 s.
 * @returns seconds, or why not: more than 59 seconds after a colon, nothing or more than six
 *   hours; undefined where the text is no length at all
 */
export function readLength(text: string): Reading | undefined {
  const seconds = secondsOf(text)
  if (seconds === undefined) return undefined
  if (Number.isNaN(seconds)) return { ok: false, sentence: say('lists.tooManySeconds', { length: text }) }
  return boundedLength(seconds, text)
}

/** A length in seconds, or the sentence that says it is none a song has. */
export const boundedLength = (seconds: number, text: string): Reading =>
  seconds >= SONG_SECONDS.shortest && seconds <= SONG_SECONDS.longest
    ? { ok: true, value: seconds }
    : { ok: false, sentence: say('lists.lengthOutside', { length: text }) }

/** NaN where minutes and seconds do not go together. */
function secondsOf(text: string): number | undefined {
  const parts = WHOLE.clock.exec(text) ?? WHOLE.primes.exec(text) ?? WHOLE.minutesSeconds.exec(text) ?? isoParts(text)
  if (parts) {
    const [hours, minutes, seconds] = parts.length === 3 ? [undefined, parts[1], parts[2]] : [parts[1], parts[2], parts[3]]
    return inSeconds(hours, minutes, seconds)
  }
  const words = WHOLE.words.exec(text)
  if (words) return inSeconds(words[1], words[2], words[3])
  const only = WHOLE.seconds.exec(text)
  return only ? decimal(only[1]) : undefined
}

const isoParts = (text: string) => (/\d/.test(text) ? WHOLE.iso.exec(text) : null)

/** PT225S says no minutes, so it may have more than 59 seconds. */
function inSeconds(hours: string | undefined, minutes: string | undefined, seconds: string | undefined): number {
  const [h, m, s] = [decimal(hours), decimal(minutes), decimal(seconds)]
  const crossed = (minutes !== undefined && s >= 60) || (h > 0 && m >= 60)
  return crossed ? Number.NaN : h * 3600 + m * 60 + s
}

/** A number with a point or a comma before its fraction; nothing is 0. */
export const decimal = (text = '0'): number => Number(text.replace(',', '.'))
