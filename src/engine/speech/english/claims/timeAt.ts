import type { Form } from '#engine/cues/claims/claim.ts'
import type { Seconds } from '#units/units.ts'
import { afterAdjectives } from './describing.ts'
import { fractionAt, numberAt } from './numberAt.ts'
import { closes, endsAt, type Reader, says, wordAfter, wordAt } from './reader.ts'
import { FULL, MINUTE_UNITS, MORE, SECOND_UNITS } from './words.ts'

/** A time with its unit, as it stands in a text. */
export interface TimePhrase {
  low: Seconds
  /** Differs from `low` in "thirty to forty seconds". */
  high: Seconds
  /** Token after it. */
  next: number
  form: Form & { as: 'duration' }
  near?: true
  /** "thirty more seconds". */
  more?: true
  /** "last minute", the word among its tokens. */
  last?: true
}

type Unit = { length: Seconds; next: number; more: boolean; adjective: boolean; short: boolean }

/**
 * The time that starts at a token: "forty seconds", "20s", "a minute and a half", "half a minute", "two minutes thirty",
 * "1:30", "a couple of minutes", "thirty to forty seconds", "a thirty-second" before a noun.
 */
export function timeAt(reader: Reader, at: number): TimePhrase | null {
  return clockTime(reader, at) ?? partOfHour(reader, at) ?? couple(reader, at) ?? articleTime(reader, at) ?? numberTime(reader, at)
}

/** "1:30": minutes and seconds. */
function clockTime(reader: Reader, at: number): TimePhrase | null {
  const match = /^(\d{1,2}):([0-5]\d)$/.exec(wordAt(reader, at))
  // Longer ones are more likely a time of day, unless they are told of something.
  if (!match || (Number(match[1]) > 4 && !/^(?:of|to|left|hard|easy)$/.test(wordAfter(reader, at)))) return null
  const seconds = 60 * Number(match[1]) + Number(match[2])
  return { low: seconds, high: seconds, next: at + 1, form: form(true, 'clock') }
}

/** "half an hour", "a quarter of an hour", "a whole hour". */
function partOfHour(reader: Reader, at: number): TimePhrase | null {
  const whole = /^(?:an|one|a)$/.test(wordAt(reader, at)) && !endsAt(reader, at) ? at + 1 : null
  const hour = whole === null ? null : /^(?:whole|full|good|solid)$/.test(wordAt(reader, whole)) ? whole + 1 : whole
  if (hour !== null && wordAt(reader, hour) === 'hour') return single(3600, hour + 1, form(false, 'minutes'))
  const part = fractionAt(reader.tokens, at)
  if (part === null || endsAt(reader, part.next - 1)) return null
  const joint = says(reader, part.next, 'of an') ? 2 : wordAt(reader, part.next) === 'an' ? 1 : 0
  return wordAt(reader, part.next + joint) === 'hour' ? single(3600 * part.value, part.next + joint + 1, form(false, 'minutes')) : null
}

/** "a couple of minutes": about two. */
function couple(reader: Reader, at: number): TimePhrase | null {
  if (!says(reader, at, 'a|another couple')) return null
  const unit = unitAt(reader, wordAt(reader, at + 2) === 'of' ? at + 3 : at + 2)
  return unit && { ...single(2 * unit.length, unit.next, form(false, unitName(unit))), near: true }
}

/** "a minute", "another minute", "the whole minute", "a minute and a half", "a minute twenty". */
function articleTime(reader: Reader, at: number): TimePhrase | null {
  const article = wordAt(reader, at)
  if (!/^(?:a|an|another|the|this|next|last|final)$/.test(article) || endsAt(reader, at)) return null
  const unit = unitAt(reader, at + 1)
  if (unit === null || unit.length === 1) return null
  const whole = single(unit.length, unit.next, form(false, 'minutes', unit.adjective))
  return {
    ...withRest(reader, whole, 1),
    ...((unit.more || article === 'another') && { more: true as const }),
    ...(/^(?:last|final)$/.test(article) && { last: true as const }),
  }
}

/** A number and its unit, or two numbers with one between them. */
function numberTime(reader: Reader, at: number): TimePhrase | null {
  const number = numberAt(reader.tokens, at)
  if (number === null || (endsAt(reader, number.next - 1) && reader.tokens[number.next - 1]!.joined === false)) return null
  const upper = /^(?:to|or)$/.test(wordAt(reader, number.next))
    ? number.next + 1
    : reader.tokens[number.next - 1]!.joined
      ? number.next
      : null
  const high = upper === null ? null : numberAt(reader.tokens, upper)
  const last = high ?? number
  // "half a minute", "three quarters of a minute".
  const joint = says(reader, last.next, 'of a|the') ? 2 : last.fraction && /^(?:a|the)$/.test(wordAt(reader, last.next)) ? 1 : 0
  const unit = unitAt(reader, last.next + joint)
  if (unit === null || (joint > 0 && unit.length === 1)) return null
  const style = form(number.figures, unitName(unit), unit.adjective)
  const more = unit.more && { more: true as const }
  if (high && high.value > number.value) {
    return { low: number.value * unit.length, high: high.value * unit.length, next: unit.next, form: style, ...more }
  }
  if (high && upper === number.next) return null
  const whole = single(number.value * unit.length, unit.next, style)
  return { ...(number.fraction || unit.length === 1 ? whole : withRest(reader, whole, number.value)), ...more }
}

/** "… minutes and a half", "… minutes thirty", "… minutes and ten seconds". */
function withRest(reader: Reader, whole: TimePhrase, minutes: number): TimePhrase {
  if (endsAt(reader, whole.next - 1) || whole.form.adjective) return whole
  const joined = wordAt(reader, whole.next) === 'and'
  const at = joined ? whole.next + 1 : whole.next
  const part = joined && fractionAt(reader.tokens, at)
  if (part) return single(60 * (minutes + part.value), part.next, whole.form)
  const rest = numberAt(reader.tokens, at)
  if (rest === null || rest.fraction || rest.value < 5 || rest.value > 59) return whole
  const unit = endsAt(reader, rest.next - 1) ? null : unitAt(reader, rest.next)
  if (unit && unit.length === 1) return single(60 * minutes + rest.value, unit.next, whole.form)
  // "A minute thirty"; of "a minute and thirty…" the minute alone.
  return joined || unit ? whole : single(60 * minutes + rest.value, rest.next, whole.form)
}

/** The unit at a token, with what may stand before it. */
function unitAt(reader: Reader, at: number): Unit | null {
  let place = at
  let more = false
  while (place < at + 2 && (FULL.has(wordAt(reader, place)) || MORE.has(wordAt(reader, place))) && !endsAt(reader, place)) {
    more ||= MORE.has(wordAt(reader, place))
    place++
  }
  const described = afterAdjectives(reader, place)
  if (described > place && /^(?:seconds|secs|minutes|mins)$/.test(wordAt(reader, described))) place = described
  const word = wordAt(reader, place)
  const length = SECOND_UNITS.has(word) ? 1 : MINUTE_UNITS.has(word) ? 60 : 0
  if (length === 0) return null
  // "90s style" is a decade.
  if (word === 's' && place === at && /^[6-9]0$/.test(wordAt(reader, at - 1)) && !closes(reader, place)) return null
  const hyphen = place === at && place > 0 && reader.tokens[place - 1]!.joined
  // "Second" by itself is a place in a row, unless a hyphen makes a length of it: "a thirty-second push".
  const single = word === 'second' || word === 'minute'
  const round = word === 'second' && /^(?:\d+[05]|ten|fifteen|twenty|thirty|forty|fifty|sixty|ninety|five)$/.test(wordAt(reader, at - 1))
  if (word === 'second' && !hyphen && !round && wordAt(reader, at - 1) !== 'one') return null
  const adjective = single && (hyphen || round) && wordAfter(reader, place) !== ''
  return { length, next: place + 1, more, adjective, short: /^(?:s|secs?|mins?)$/.test(word) }
}

const unitName = ({ length, short }: Unit): (Form & { as: 'duration' })['unit'] => (length === 60 ? 'minutes' : short ? 'short' : 'seconds')

const form = (figures: boolean, unit: (Form & { as: 'duration' })['unit'], adjective = false): Form & { as: 'duration' } => ({
  as: 'duration',
  figures,
  unit,
  adjective,
})

const single = (seconds: Seconds, next: number, style: Form & { as: 'duration' }): TimePhrase => ({
  low: seconds,
  high: seconds,
  next,
  form: style,
})
