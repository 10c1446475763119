import type { Meaning } from '#engine/cues/claims/claim.ts'
import { type Amount, amountAt } from './amountAt.ts'
import { numberAt } from './numberAt.ts'
import {
  claim,
  closes,
  endsAt,
  isKnob,
  isUnit,
  type Meanings,
  type Reader,
  type Rule,
  read,
  says,
  slot,
  startsAt,
  wordAfter,
  wordAt,
  wordBefore,
} from './reader.ts'
import { wordSet } from './words.ts'

/** Words that lead up to a place on the scale: "back to", "be at", "all the way to". */
const LEADING = wordSet(
  "up down back go get climb come build drop bring take turn crank ease dial roll settle way it right set return now be at sitting sit land landing you ride hold stay holding riding puts put leaves leave you’re you're we're that's gear on resistance wheel knob",
)

/** "up to two and a half", "at two turns", "back to base plus three quarters": a place on the bike's scale. */
export const readTotal: Rule = (reader, at) => preposed(reader, at) ?? ranged(reader, at) ?? postposed(reader, at) ?? level(reader, at)

function preposed(reader: Reader, at: number) {
  const joint = wordAt(reader, at)
  // "Till you hit eight turns."
  const arrives = /^(?:hit|reach|hitting|reaching)$/.test(joint) && TILL.test(wordBefore(reader, at - 1))
  if ((joint !== 'to' && joint !== 'at' && !arrives) || endsAt(reader, at)) return null
  let first = at + 1
  const overBase = /^(?:base|baseline)$/.test(wordAt(reader, first)) && /^(?:plus|and)$/.test(wordAfter(reader, first))
  if (overBase) first += 2
  const amount = amountAt(reader, first)
  if (amount === null || amount.plain || amount.more) return null
  const led = joint === 'at' || startsAt(reader, at) || LEADING.has(wordBefore(reader, at))
  const closed = closes(reader, amount.next - 1) || says(reader, amount.next, 'over|above base')
  if (overBase || amount.named ? !led && !amount.named : !((led || arrives) && closed && isPlace(reader, at, amount))) return null
  return made(reader, amount.first, amount, overBase)
}

const TILL = /^(?:till|til|until)$/

/** A number that can only be a place on the scale: a fraction, or a level of a scale that has no other numbers. */
function isPlace(reader: Reader, at: number, amount: Amount): boolean {
  if (amount.fraction) return wordAt(reader, at) === 'to' || /^(?:be|land|sit|ride|you're|we're)$/.test(wordBefore(reader, at))
  if (!isKnob(reader)) return wordAt(reader, at) === 'to'
  return wordAt(reader, at) === 'to' && wordBefore(reader, at) === 'back' && amount.low <= 10 && endsAt(reader, amount.next - 1)
}

/** "somewhere between three and four turns", "anywhere from 22 to 26". */
function ranged(reader: Reader, at: number) {
  if (!/^(?:somewhere|anywhere|between|anything)$/.test(wordAt(reader, at)) || endsAt(reader, at)) return null
  const lead = /^(?:between|from|in)$/.test(wordAt(reader, at + 1)) ? at + 2 : at + 1
  const low = numberAt(reader.tokens, lead)
  if (low === null || !/^(?:and|to)$/.test(wordAt(reader, low.next)) || endsAt(reader, low.next - 1)) return null
  const high = amountAt(reader, low.next + 1)
  if (high === null || high.low <= low.value) return null
  const bare = !isKnob(reader) && wordAt(reader, at) !== 'between' && closes(reader, high.next - 1)
  if (!(high.named || bare)) return null
  const meanings: Meanings = [
    { about: 'total', low: low.value, high: high.high },
    { about: 'change', low: low.value, high: high.high },
  ]
  return read(high.next, claim(reader, at, high.next - 1, high.named ? meanings : [meanings[0]]))
}

/** "two turns total", "three quarters over base", "a total of two", "that makes two turns". */
function postposed(reader: Reader, at: number) {
  const led = says(reader, at, 'total of')
    ? at + 2
    : says(reader, at, 'that|which makes|is') || says(reader, at, 'makes it|that')
      ? at + 2
      : null
  if (led !== null) {
    const amount = amountAt(reader, led)
    const sum = wordAt(reader, at) === 'total'
    if (
      amount === null ||
      amount.plain ||
      !(amount.named || (sum && closes(reader, amount.next - 1)) || (amount.fraction && closes(reader, amount.next - 1)))
    )
      return null
    return made(reader, at, amount, false)
  }
  if (/^(?:base|baseline)$/.test(wordAt(reader, at)) && /^(?:plus|and)$/.test(wordAfter(reader, at))) {
    const amount = amountAt(reader, at + 2)
    return amount && (amount.named || closes(reader, amount.next - 1)) ? made(reader, at, amount, true) : null
  }
  const amount = amountAt(reader, at)
  if (amount === null || amount.more || endsAt(reader, amount.next - 1)) return null
  if (says(reader, amount.next, 'over|above base|baseline') || says(reader, amount.next, 'over|above your base')) {
    return made(reader, at, amount, true, wordAt(reader, amount.next + 1) === 'your' ? 3 : 2)
  }
  if (wordAt(reader, amount.next) === 'minimum' && (amount.named || amount.fraction)) return made(reader, at, amount, false)
  if (wordAt(reader, amount.next) === 'total' || wordAt(reader, amount.next) === 'altogether') return made(reader, at, amount, false, 1)
  return says(reader, amount.next, 'in total|all') ? made(reader, at, amount, false, 2) : null
}

/** "level forty-five". */
function level(reader: Reader, at: number) {
  if (isKnob(reader) || !isUnit(reader, wordAt(reader, at)) || endsAt(reader, at)) return null
  const amount = amountAt(reader, at + 1)
  return amount && !amount.named && !amount.fraction && closes(reader, amount.next - 1) ? made(reader, at, amount, false) : null
}

function made(reader: Reader, first: number, amount: Amount, overBase: boolean, tail = 0) {
  let next = amount.next + tail
  let over = overBase
  if (tail === 0 && says(reader, amount.next, 'over|above base|baseline') && !endsAt(reader, amount.next - 1)) {
    next += 2
    over = true
  }
  const least = wordAfter(reader, next - 1) === 'minimum'
  const orMore = least || (says(reader, next, 'or more|better|higher') && !endsAt(reader, next - 1))
  if (orMore) next += least ? 1 : 2
  const total: Meaning = {
    about: 'total',
    low: amount.low,
    high: amount.high,
    ...(orMore && { orMore: true as const }),
    ...(over && { overBase: true as const }),
  }
  const [from, to] = amount.said
  const slots = amount.low === amount.high ? [slot(reader, from, to, amount.form)] : []
  return read(next, claim(reader, first, next - 1, [total], slots))
}
