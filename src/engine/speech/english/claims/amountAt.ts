import type { Form } from '#engine/cues/claims/claim.ts'
import { fractionAt, type NumberPhrase, numberAt } from './numberAt.ts'
import { endsAt, isUnit, type Reader, wordAt } from './reader.ts'
import { MORE } from './words.ts'

/** An amount on the bike's scale as it stands in a text. */
export interface Amount {
  low: number
  /** Differs from `low` in "three to four turns". */
  high: number
  /** First token, with "a", "another" or "one more" before it, and the token after it. */
  first: number
  next: number
  /** True where the unit is said. */
  named: boolean
  /** True where a fraction is part of it, which nothing but a knob is told. */
  fraction: boolean
  /** "another half turn", "one more turn". */
  more: boolean
  /** "a turn", with nothing that says how many. */
  plain: boolean
  /** Token range of the words that say the number, with its unit. */
  said: [first: number, last: number]
  form: Form & { as: 'amount' }
}

/** What may stand before an amount without changing it. */
const BEFORE = new Set([
  'just',
  'exactly',
  'maybe',
  'about',
  'around',
  'only',
  'another',
  'extra',
  'good',
  'roughly',
  ...'tiny little lil teeny wee itty measly mere'.split(' '),
])

/**
 * The amount that starts at a token: "half a turn", "three quarters", "one and a quarter turns", "a turn and a half", "a
 * full turn", "another half", "one more turn", "three to four turns", "15 levels".
 */
export function amountAt(reader: Reader, at: number): Amount | null {
  let start = at
  let more = false
  const isArticle = (place: number) => /^(?:a|an)$/.test(wordAt(reader, place))
  while (
    start < at + 3 &&
    !endsAt(reader, start) &&
    (BEFORE.has(wordAt(reader, start)) || (isArticle(start) && BEFORE.has(wordAt(reader, start + 1))))
  ) {
    more ||= MORE.has(wordAt(reader, start))
    start++
  }
  // "The whole one and three quarters."
  if (/^(?:whole|entire|full)$/.test(wordAt(reader, start)) && !endsAt(reader, start) && numberAt(reader.tokens, start + 1)?.fraction)
    start++
  // "One more half turn", "one more turn".
  if (wordAt(reader, start) === 'one' && wordAt(reader, start + 1) === 'more' && !endsAt(reader, start) && !endsAt(reader, start + 1)) {
    const counted = isUnit(reader, wordAt(reader, start + 2))
    const core = counted
      ? amountOf(reader, at, start, { value: 1, next: start + 2, figures: false, fraction: false }, true)
      : coreAt(reader, at, start + 2, true)
    if (core) return core
  }
  return coreAt(reader, at, start, more)
}

function coreAt(reader: Reader, first: number, at: number, more: boolean): Amount | null {
  const whole = wholeUnit(reader, first, at, more)
  if (whole !== null) return whole
  const number = numberAt(reader.tokens, at)
  return number && amountOf(reader, first, at, number, more)
}

/** "a turn", "a full turn", "another turn", each with "and a half" or without. */
function wholeUnit(reader: Reader, first: number, at: number, more: boolean): Amount | null {
  const article = /^(?:a|an|the|one)$/.test(wordAt(reader, at))
  // "Turn and a half on", "full turn on": the article is left away.
  const bare = /^(?:full|whole)$/.test(wordAt(reader, at)) && isUnit(reader, wordAt(reader, at + 1)) && !endsAt(reader, at)
  const clipped = bare || (isUnit(reader, wordAt(reader, at)) && partAfter(reader, at) !== null)
  if (!article && !more && !clipped) return null
  let place = article ? at + 1 : at
  if (article && endsAt(reader, at)) return null
  const full = /^(?:full|whole|good|solid|big|complete|single)$/.test(wordAt(reader, place))
  if (full) place++
  if (!isUnit(reader, wordAt(reader, place)) || (article && wordAt(reader, at) === 'the' && !full)) return null
  if (wordAt(reader, at) === 'one' && !full) return null
  const part = partAfter(reader, place)
  const value = 1 + (part?.value ?? 0)
  const next = part?.next ?? place + 1
  return {
    low: value,
    high: value,
    first,
    next,
    named: true,
    fraction: part !== null,
    more,
    plain: !full && !more && part === null,
    said: [at, next - 1],
    form: { as: 'amount', figures: false, decimal: false, unit: reader.unit, article },
  }
}

/** "… and a half" after a unit. */
function partAfter(reader: Reader, unit: number): NumberPhrase | null {
  if (endsAt(reader, unit) || wordAt(reader, unit + 1) !== 'and' || reader.tokens[unit + 2] === undefined) return null
  return fractionAt(reader.tokens, unit + 2)
}

function amountOf(reader: Reader, first: number, at: number, number: NumberPhrase, more: boolean): Amount | null {
  const upper = upperOf(reader, number)
  const last = upper ?? number
  const joint = unitJoint(reader, last.next)
  const extra = joint === 0 && MORE.has(wordAt(reader, last.next)) && isUnit(reader, wordAt(reader, last.next + 1)) ? 1 : 0
  const gap = joint + extra + (/^(?:full|whole)$/.test(wordAt(reader, last.next + joint + extra)) ? 1 : 0)
  const named = !endsAt(reader, last.next - 1) && isUnit(reader, wordAt(reader, last.next + gap))
  const unitAt = last.next + gap
  // "two turns and a half".
  const part = named && !number.fraction && upper === null ? partAfter(reader, unitAt) : null
  const next = part?.next ?? (named ? unitAt + 1 : last.next)
  const text = wordAt(reader, at)
  return {
    low: number.value + (part?.value ?? 0),
    high: last.value + (part?.value ?? 0),
    first,
    next,
    named,
    fraction: number.fraction || last.fraction || part !== null,
    more: more || extra > 0,
    plain: false,
    said: [at, next - 1],
    form: {
      as: 'amount',
      figures: number.figures,
      decimal: number.figures && /[.,]/.test(text),
      ...(named && { unit: reader.unit }),
      article: text === 'a' || text === 'an' || !number.fraction || number.value >= 1,
    },
  }
}

/** "three to four", "3–4", "three or four": the upper end. */
function upperOf(reader: Reader, number: NumberPhrase): NumberPhrase | null {
  const { tokens } = reader
  const joined = tokens[number.next - 1]!.joined && number.figures
  if (!joined && (endsAt(reader, number.next - 1) || !/^(?:to|or)$/.test(wordAt(reader, number.next)))) return null
  const upper = numberAt(tokens, joined ? number.next : number.next + 1)
  return upper !== null && upper.value > number.value ? upper : null
}

/** How many words stand between a number and its unit: "half a turn", "three quarters of a turn". */
function unitJoint(reader: Reader, at: number): number {
  if (/^(?:of)$/.test(wordAt(reader, at)) && /^(?:a|an|the)$/.test(wordAt(reader, at + 1)) && isUnit(reader, wordAt(reader, at + 2)))
    return 2
  return /^(?:a|an)$/.test(wordAt(reader, at)) && isUnit(reader, wordAt(reader, at + 1)) ? 1 : 0
}
