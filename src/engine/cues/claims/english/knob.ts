import type { Claim, Meaning, Slot } from '#engine/cues/claims/claim.ts'
import { type Amount, amountAt } from './amountAt.ts'
import { fractionAt } from './numberAt.ts'
import {
  claim,
  closes,
  endsAt,
  isKnob,
  isUnit,
  type Meanings,
  type Reader,
  type Reading,
  type Rule,
  read,
  says,
  slot,
  startsAt,
  wordAfter,
  wordAt,
  wordBefore,
} from './reader.ts'
import { OFF, ON, wordSet } from './words.ts'

const ADDING = wordSet('add adding load loading crank bump stack pile sneak slap tighten layer throw increase raise heap')
const TAKING = wordSet(
  'drop dropping lose losing shed peel peeling shave knock strip release ease dump unload loosen cut reduce lighten lower remove subtract ditch',
)
/** These say which way only with "on", "off" and the like. */
const EITHER = wordSet(
  'take taking put putting turn turning come coming go going bring pull pulling roll wind pop kick dial move slide set back let push get grab give gimme find click want need twist nudge crack toss stick tack',
)
/** Of these, what is handed over goes on. */
const HANDING = wordSet('give gimme get grab dial want need')
const BETWEEN = wordSet(
  'it that this me us in on off up down back by with of your the knob wheel dial resistance gear load just there here now go from another an extra some yourself ourselves yourselves ya onto in into out',
)
/** Largest change of a knob in one call that is said without its unit; more is seconds. */
const MOST_TURNS = 5

/** "same gear", "keep it on". */
export const readStay: Rule = (reader, at) => {
  if (says(reader, at, 'same gear|resistance|load|setting') || (wordAt(reader, at) === 'same' && isUnit(reader, wordAfter(reader, at)))) {
    return read(at + 2, claim(reader, at, at + 1, [{ about: 'stay' }]))
  }
  if (says(reader, at, 'keep it on')) return read(at + 3, claim(reader, at, at + 2, [{ about: 'stay' }]))
  return null
}

/** "add one and a half", "turn it up by a half", "drop it by one and a quarter", "off with two turns", "let go of a turn". */
export const readVerb: Rule = (reader, at) => {
  const verb = wordAt(reader, at)
  const known = ADDING.has(verb) || TAKING.has(verb) || EITHER.has(verb)
  const after = wordAfter(reader, at)
  // "Off with two turns", "up by a quarter".
  const particle = !known && ((/^(?:on|off)$/.test(verb) && after === 'with') || (/^(?:up|down|on|off)$/.test(verb) && after === 'by'))
  if (!(known || particle) || endsAt(reader, at)) return null
  let place = at + 1
  let sign = ADDING.has(verb) ? 1 : TAKING.has(verb) ? -1 : particle ? (ON.has(verb) ? 1 : -1) : 0
  let by = false
  let amount: Amount | null = null
  for (; place <= at + 6; place++) {
    amount = amountAt(reader, place)
    if (amount !== null) break
    const word = wordAt(reader, place)
    // "Turn it to the right two turns."
    if (isKnob(reader) && says(reader, place, 'to the|your right|left') && !endsAt(reader, place + 2)) {
      place += 2
      sign = wordAt(reader, place) === 'right' ? 1 : -1
      continue
    }
    if (!BETWEEN.has(word) || endsAt(reader, place)) return null
    by ||= word === 'by'
    if (sign === 0 && /^(?:off|down|back|of)$/.test(word)) sign = -1
    if (sign === 0 && /^(?:on|up|in)$/.test(word)) sign = 1
  }
  if (amount === null || amount.low === 0) return null
  amount = withAnother(reader, amount)
  if (isDifference(reader, amount)) return read(amount.next)
  const hand = handTurned(reader, amount)
  if (hand !== null) return read(hand.next, changeClaim(reader, at, hand.next - 1, amount, hand.sign, false))
  const tail = wordAfter(reader, amount.next - 1)
  const turned = /^(?:on|off|up|down|more|less|back)$/.test(tail) && !leadsElsewhere(reader, amount.next)
  if (turned && !TAKING.has(verb) && !ADDING.has(verb)) sign = OFF.has(tail) || tail === 'back' ? -1 : 1
  if (turned && ADDING.has(verb) && tail === 'off') sign = -1
  if (sign === 0 && HANDING.has(verb) && (amount.named || amount.fraction)) sign = 1
  if (sign === 0 || !isAmount(reader, amount, by || turned || ADDING.has(verb) || TAKING.has(verb))) return null
  const last = turned ? amount.next : amount.next - 1
  return read(last + 1, changeClaim(reader, at, last, amount, sign, false))
}

/** "a quarter and a half": two fractions at once. */
function withAnother(reader: Reader, amount: Amount): Amount {
  const { tokens } = reader
  if (amount.named || !amount.fraction || amount.low >= 1 || wordAfter(reader, amount.next - 1) !== 'and' || !tokens[amount.next + 1])
    return amount
  const part = fractionAt(tokens, amount.next + 1)
  if (part === null || wordAfter(reader, part.next - 1) !== '') return amount
  return { ...amount, low: amount.low + part.value, high: amount.high + part.value, next: part.next, said: [amount.said[0], part.next - 1] }
}

/** Whether what stands after a verb can be an amount at all: "add a smile" and "drop two heels" are none. */
function isAmount(reader: Reader, { low, high, next, named, fraction }: Amount, led: boolean): boolean {
  if (named) return wordAfter(reader, next - 1) !== 'of'
  if (low === high && !fraction && isKnob(reader) && low > MOST_TURNS) return false
  if (!fraction && !led) return false
  return closes(reader, next - 1)
}

/** "… on the beat", "… up the hill": the direction is not the knob's. */
function leadsElsewhere(reader: Reader, at: number): boolean {
  const after = wordAfter(reader, at)
  if (after === 'the' || after === 'your')
    return !/^(?:knob|wheel|dial|resistance|gear|drop|chorus|top|flywheel|beat|one)$/.test(wordAt(reader, at + 2))
  return after === 'each' || after === 'every' || after === 'my'
}

/** "half a turn on", "another quarter", "+¾", "minus one and a quarter", "half a turn, then push". */
export const readChange: Rule = (reader, at) => {
  const amount = amountAt(reader, at)
  const signed = signBefore(reader, at)
  if (amount === null || amount.low === 0) return null
  if (signed !== 0 && isAmount(reader, amount, true)) {
    const first = /^(?:plus|minus)$/.test(wordBefore(reader, at)) ? at - 1 : at
    return read(amount.next, changeClaim(reader, first, amount.next - 1, amount, signed))
  }
  if (isDifference(reader, amount)) return read(amount.next)
  const turned = handTurned(reader, amount)
  if (turned !== null) return read(turned.next, changeClaim(reader, at, turned.next - 1, amount, turned.sign, false))
  const orMore = says(reader, amount.next, 'or more') && !endsAt(reader, amount.next - 1) ? 2 : 0
  const way = orMore > 0 ? wordAfter(reader, amount.next + 1) : wordAfter(reader, amount.next - 1)
  const sign = ON.has(way) ? 1 : OFF.has(way) ? -1 : 0
  // Without the unit only "on" and "off" are about the knob, and only for amounts a knob turns by in one call.
  const weighed = amount.fraction && (way === 'heavier' || way === 'lighter')
  const bare = (way === 'on' || way === 'off' || weighed) && (!isKnob(reader) || amount.low <= MOST_TURNS)
  if (sign !== 0 && !amount.plain && (amount.named || bare) && !elsewhere(reader, amount, orMore)) {
    return read(amount.next + orMore + 1, changeClaim(reader, at, amount.next + orMore, amount, sign))
  }
  if (sign !== 0 && amount.plain && (way === 'on' || way === 'off') && !elsewhere(reader, amount, orMore)) {
    return read(amount.next + 1, changeClaim(reader, at, amount.next, amount, sign))
  }
  if (amount.more && (amount.named || amount.fraction) && isAmount(reader, amount, true)) {
    return read(amount.next, changeClaim(reader, at, amount.next - 1, amount, 1))
  }
  return bareAmount(reader, at, amount)
}

/** "half a turn more than the last one", "a quarter heavier than push two": from another place than the one riders are at. */
const isDifference = (reader: Reader, { next }: Amount): boolean =>
  !endsAt(reader, next - 1) &&
  says(reader, next, 'more|less|heavier|lighter|higher|lower|up|down than|from|on') &&
  (wordAt(reader, next + 1) === 'than' ||
    (/^(?:the|that|our|your|push|round|hill|climb)$/.test(wordAt(reader, next + 2)) &&
      /^(?:last|first|previous|one)$/.test(wordAt(reader, next + 3))))

/** Where "… to the right", "… back on", "… more on the knob" ends, and which way it turns; a knob gets heavier to the right. */
function handTurned(reader: Reader, amount: Amount): { sign: 1 | -1; next: number } | null {
  const { next, named, fraction, low, plain } = amount
  if (endsAt(reader, next - 1)) return null
  const told = named || fraction || low <= MOST_TURNS
  const side = says(reader, next, 'to the|your right|left')
    ? 3
    : isKnob(reader) && named && /^(?:right|clockwise|left|counterclockwise)$/.test(wordAt(reader, next)) && closesWay(reader, next)
      ? 1
      : 0
  if (side > 0 && told && isKnob(reader))
    return { sign: /^(?:right|clockwise)$/.test(wordAt(reader, next + side - 1)) ? 1 : -1, next: next + side }
  if (!(named ? !plain || says(reader, next, 'goes|comes|going|coming') : fraction && isKnob(reader))) return null
  // "Three quarters more", "one and a half more on the knob"; of time and road it would be said of what is left.
  if (/^(?:more|extra)$/.test(wordAt(reader, next)) && !named) {
    const on = wordAfter(reader, next) === 'on' && !leadsElsewhere(reader, next + 1)
    return on || closesWay(reader, next) ? { sign: 1, next: next + (on ? 2 : 1) } : null
  }
  const verb = /^(?:come|comes|go|goes|coming|going|gets|is|are|right|straight|back|comin|goin)$/.test(wordAt(reader, next)) ? 1 : 0
  if (verb === 0) return null
  const again = /^(?:back|right|straight)$/.test(wordAt(reader, next + verb)) && !endsAt(reader, next + verb) ? 1 : 0
  const way = next + verb + again
  if (endsAt(reader, way - 1) || !/^(?:on|off)$/.test(wordAt(reader, way)) || leadsElsewhere(reader, way)) return null
  return { sign: wordAt(reader, way) === 'on' ? 1 : -1, next: way + 1 }
}

/** "half a turn right, and go"; not "half a turn right after this". */
const closesWay = (reader: Reader, at: number): boolean =>
  wordAfter(reader, at) === '' || /^(?:and|then|on|as|when|before|so|please|y'all|team|everybody|for)$/.test(wordAfter(reader, at))

/** "five to six turns on the hill": where, not which way. */
const elsewhere = (reader: Reader, amount: Amount, orMore: number): boolean => leadsElsewhere(reader, amount.next + orMore)

/** "half a turn, then push", "three to four turns, your choice": on top or altogether, as it fits. */
function bareAmount(reader: Reader, at: number, amount: Amount): Reading | null {
  const before = wordBefore(reader, at)
  const opens =
    startsAt(reader, at) ||
    /^(?:and|then|with|is|it's|that's|just|at|least|between|from|wants|needs|takes|got|have|carry|carrying)$/.test(before) ||
    (before === 'for' && /^(?:looking|asking|calling|aiming|shooting|going)$/.test(wordBefore(reader, at - 1)))
  const under = says(reader, amount.next, 'under|beneath you|us|your') && !endsAt(reader, amount.next - 1)
  if (!amount.named || amount.plain || !opens || wordAfter(reader, amount.next - 1) === 'of') return null
  if (!under && !closes(reader, amount.next - 1)) return null
  const total: Meaning = { about: 'total', low: amount.low, high: amount.high }
  const change: Meaning = { about: 'change', low: amount.low, high: amount.high }
  const meanings: Meanings = amount.low < amount.high ? [total, change] : [change, total]
  return read(amount.next, claim(reader, at, amount.next - 1, meanings, amountSlots(reader, amount)))
}

/** A sign written before a number, or "plus" and "minus" said before it; "base plus" is a total. */
function signBefore(reader: Reader, at: number): number {
  const before = wordBefore(reader, at)
  if (before === 'plus') return /^(?:base|baseline)$/.test(wordBefore(reader, at - 1)) ? 0 : 1
  if (before === 'minus') return -1
  return reader.tokens[at]!.sign ?? 0
}

/** @param turns whether "on" and "off" may change places; after a verb they may not */
function changeClaim(reader: Reader, first: number, last: number, amount: Amount, sign: number, turns = true): Claim {
  const [low, high] = sign > 0 ? [amount.low, amount.high] : [-amount.high, -amount.low]
  const adds = (amount.more || /^(?:and|then|plus)$/.test(wordBefore(reader, first))) && { adds: true as const }
  return claim(
    reader,
    first,
    last,
    [{ about: 'change', low, high, ...adds }],
    [
      ...amountSlots(reader, amount),
      ...(turns && last >= amount.next && /^(?:on|off)$/.test(wordAt(reader, last)) ? [slot(reader, last, last, { as: 'direction' })] : []),
    ],
  )
}

function amountSlots(reader: Reader, amount: Amount): Slot[] {
  const [first, last] = amount.said
  return amount.low === amount.high ? [slot(reader, first, last, amount.form)] : []
}
