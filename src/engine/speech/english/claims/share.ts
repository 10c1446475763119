import type { Whole } from '#engine/cues/claims/claim.ts'
import { comingEnd } from './coming.ts'
import { fractionAt, numberAt } from './numberAt.ts'
import { claim, closes, endsAt, type Reader, type Rule, read, says, wordAfter, wordAt, wordBefore } from './reader.ts'
import { endOfWhole, wholeAfter, wholeOf } from './role.ts'

const DONE = /^(?:done|in|down|behind|gone|there|through|finished|over|complete|up)$/
const LEFT = /^(?:left|remaining)$/

/** "halfway", "two thirds done", "half of it is behind you", "a third left". */
export const readShare: Rule = (reader, at) => halfway(reader, at) ?? part(reader, at)

function halfway(reader: Reader, at: number) {
  const word = wordAt(reader, at)
  const two = (word === 'half' && wordAfter(reader, at) === 'way') || says(reader, at, 'mid|half point|mark')
  // "That's half the hill".
  if (word === 'half' && /^(?:that's|this|was|is)$/.test(wordBefore(reader, at)) && says(reader, at, 'half the|this|our|that')) {
    const of = wholeOf(wordAt(reader, at + 2))
    if (of !== undefined && closes(reader, at + 2)) return made(reader, at, at + 3, 0.5, { of })
  }
  // "Right in the middle of it"; a push may be the middle one too.
  if (says(reader, at, 'in the middle of it|this|that') && closes(reader, at + 4)) return made(reader, at, at + 5, 0.5, { of: 'block' })
  if (!/^(?:halfway|midway|midpoint)$/.test(word) && !two) return null
  let next = at + (two ? 2 : 1)
  if (word === 'halfway' && /^(?:point|mark)$/.test(wordAfter(reader, at))) next++
  const up = wordAfter(reader, next - 1) === 'up'
  if (/^(?:there|done|up|through|home)$/.test(wordAfter(reader, next - 1)) && endOfWhole(reader, next) === next) next++
  // What goes up is the hill.
  return made(reader, at, next, 0.5, up ? { of: 'block' } : {})
}

function part(reader: Reader, at: number) {
  // "Last third, legs loose."
  const word = wordAt(reader, at)
  if (/^(?:last|final)$/.test(word) && !endsAt(reader, at)) {
    const part = /^(?:half|third|quarter)$/.test(wordAt(reader, at + 1)) ? fractionAt(reader.tokens, at + 1) : null
    if (part !== null && part.next === at + 2 && (closes(reader, at + 1) || endOfWhole(reader, at + 2) > at + 2))
      return made(reader, at, at + 2, 1 - part.value)
  }
  const amount = percent(reader, at) ?? fraction(reader, at)
  if (amount === null || amount.value <= 0 || amount.value >= 1 || endsAt(reader, amount.next - 1)) return null
  let next = amount.next
  if (says(reader, next, 'of the way')) {
    const tail = /^(?:there|up|through|done|in)$/.test(wordAfter(reader, next + 2)) ? 1 : 0
    return made(reader, at, next + 3 + tail, amount.value)
  }
  // "Half of it is behind you", "half of them done".
  let of: { of?: Whole } = {}
  const whole = wholeAfter(reader, next)
  if (wordAt(reader, next) === 'of' && whole.of !== undefined && /^(?:the|this|that|our|your)$/.test(wordAt(reader, next + 1))) {
    of = whole
    next = endOfWhole(reader, next)
    if (endsAt(reader, next - 1)) return null
  } else if (wordAt(reader, next) === 'of' && /^(?:it|this|that|them|these|the)$/.test(wordAt(reader, next + 1))) {
    if (/^(?:it|this|that)$/.test(wordAt(reader, next + 1))) of = { of: 'block' }
    next += wordAt(reader, next + 1) === 'the' ? 3 : 2
    if (endsAt(reader, next - 1)) return null
  } else if (amount.plain && /^(?:the|this|our)$/.test(wordAt(reader, next)) && wholeOf(wordAt(reader, next + 1)) !== undefined) {
    // "Half the ride is still in front of us."
    of = { of: wholeOf(wordAt(reader, next + 1))! }
    next += 2
    if (endsAt(reader, next - 1)) return null
  } else if (amount.plain && /^(?:on|up|in)$/.test(wordAt(reader, next))) return null
  // "Half of it's done."
  if (next === amount.next && says(reader, next, "of it's|that's|this's")) {
    of = { of: 'block' }
    next += 2
    if (endsAt(reader, next - 1)) return null
  }
  while (/^(?:is|are|it's|still|already|now)$/.test(wordAt(reader, next)) && !endsAt(reader, next)) next++
  const tail = wordAt(reader, next)
  const toCome = comingEnd(reader, next)
  if (toCome !== null) return made(reader, at, toCome, 1 - amount.value, of)
  if (says(reader, next, 'in the books|bank|bag|can')) return made(reader, at, next + 3, amount.value, of)
  if (says(reader, next, 'to go')) return made(reader, at, next + 2, 1 - amount.value, of)
  if (LEFT.test(tail)) return made(reader, at, next + 1, 1 - amount.value, of)
  if (says(reader, next, 'under you|us')) return made(reader, at, next + 2, amount.value, of)
  // "Leave three quarters behind" is of the knob.
  if (tail === 'behind' && /^(?:leave|leaves|leaving|keep)$/.test(wordBefore(reader, at))) return null
  if (!DONE.test(tail) || tail === 'up' || /^(?:base|baseline|your)$/.test(wordAfter(reader, next))) return null
  return made(reader, at, next + (tail === 'behind' && /^(?:you|us)$/.test(wordAfter(reader, next)) ? 2 : 1), amount.value, of)
}

function fraction(reader: Reader, at: number) {
  const token = reader.tokens[at]
  const number = token ? fractionAt(reader.tokens, at) : null
  return number && { ...number, plain: true }
}

function percent(reader: Reader, at: number) {
  const number = numberAt(reader.tokens, at)
  if (number === null || number.fraction || wordAfter(reader, number.next - 1) !== 'percent') return null
  return { value: number.value / 100, next: number.next + 1, plain: false }
}

const made = (reader: Reader, first: number, next: number, value: number, of: { of?: Whole } = {}) =>
  read(
    endOfWhole(reader, next),
    claim(reader, first, endOfWhole(reader, next) - 1, [{ about: 'share', value, ...of, ...wholeAfter(reader, next) }]),
  )
