import type { Claim, Meaning, Slot } from '#engine/cues/claims/claim.ts'
import { type Amount, amountAt } from './amountAt.ts'
import { ADDING, BETWEEN, EITHER, HANDING, isParticle, isPause, TAKING, verbAt } from './knobVerbs.ts'
import { fractionAt, numberAt } from './numberAt.ts'
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
import { OFF, ON } from './words.ts'

/** Largest change of a knob in one call that is said without its unit; more is seconds. */
const MOST_TURNS = 5

/** "same gear", "keep it on". */
export const readStay: Rule = (reader, at) => {
  // "Same gear as push one", "same gear each time" is told of other blocks.
  if (says(reader, at, 'same') && /^(?:as|each|every|for|all)$/.test(wordAfter(reader, at + 1))) return null
  if (says(reader, at, 'same gear|resistance|load|setting') || (wordAt(reader, at) === 'same' && isUnit(reader, wordAfter(reader, at)))) {
    return read(at + 2, claim(reader, at, at + 1, [{ about: 'stay' }]))
  }
  if (says(reader, at, 'keep it on')) return read(at + 3, claim(reader, at, at + 2, [{ about: 'stay' }]))
  return null
}

/** "add one and a half", "turn it up by a half", "drop it by one and a quarter", "off with two turns", "let go of a turn". */
export const readVerb: Rule = (reader, at) => {
  const verb = verbAt(reader, at)
  const known = ADDING.has(verb) || TAKING.has(verb) || EITHER.has(verb)
  const particle = !known && isParticle(reader, at)
  // "I'd like half a turn"; "like two turns ago" is a likeness.
  if (!(known || particle) || endsAt(reader, at) || (verb === 'like' && !/^(?:i'd|we'd|would)$/.test(wordBefore(reader, at)))) return null
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
    // "Turn it up, one and a half": a pause before the amount, and nothing but the amount behind it.
    const side = isKnob(reader) && /^(?:turn|crank|twist|roll|dial)$/.test(verb) && /^(?:left|right)$/.test(word)
    if (!(BETWEEN.has(word) || side) || (endsAt(reader, place) && !isPause(reader, place))) return null
    by ||= word === 'by'
    if (sign === 0 && /^(?:off|down|back|of)$/.test(word)) sign = -1
    // "Come on down a turn."
    if (sign === 0 && word === 'on' && /^(?:down|back|off|up|in)$/.test(wordAfter(reader, place))) continue
    if (sign === 0 && /^(?:on|up|in)$/.test(word)) sign = 1
    // "Turn it left a whole turn."
    if (side) sign = word === 'right' ? 1 : -1
  }
  if (amount === null || amount.low === 0) return null
  amount = withAnother(reader, amount)
  if (isDifference(reader, amount)) return read(amount.next)
  const left = leftOn(reader, at, verb, amount)
  if (left !== null) return left
  if (verb === 'leave' || verb === 'keep') return null
  const hand = handTurned(reader, amount)
  if (hand !== null) return read(hand.next, changeClaim(reader, at, hand.next - 1, amount, hand.sign, false))
  const tail = wordAfter(reader, amount.next - 1)
  // "I want one more" is one more of anything but turns.
  const counted = /^(?:more|less)$/.test(tail) && isKnob(reader) && !amount.named && !amount.fraction
  const turned = /^(?:on|off|up|down|more|less|back|away)$/.test(tail) && !counted && !leadsElsewhere(reader, amount.next)
  // "Put that turn back in", "take it back off".
  const again = tail === 'back' && /^(?:in|on|off|out)$/.test(wordAfter(reader, amount.next)) ? 1 : 0
  const way = again > 0 ? wordAt(reader, amount.next + 1) : tail
  if (turned && !TAKING.has(verb) && !ADDING.has(verb))
    sign = OFF.has(way) || way === 'out' || way === 'away' || (way === 'back' && !/^putt?/.test(verb)) ? -1 : 1
  if (turned && ADDING.has(verb) && tail === 'off') sign = -1
  if (verb === 'let' && tail === 'go') sign = -1
  if (sign === 0 && HANDING.has(verb) && (amount.named || amount.fraction)) sign = 1
  // "The knob moves a quarter of a turn": which way is left to the plan.
  if (
    sign === 0 &&
    /^(?:move|turn)$/.test(verb) &&
    (amount.named || amount.fraction) &&
    /^(?:knob|wheel|dial)$/.test(wordBefore(reader, at))
  ) {
    const { meanings, ...rest } = changeClaim(reader, at, amount.next - 1, amount, 1, false)
    return read(amount.next, { ...rest, meanings: [...meanings, { about: 'change', low: -amount.high, high: -amount.low }] })
  }
  if (sign === 0 || !isAmount(reader, amount, by || turned || ADDING.has(verb) || TAKING.has(verb))) return null
  const last = turned ? amount.next + again : amount.next - 1
  const made = changeClaim(reader, at, last, amount, sign, false)
  // After a pause it may be where riders come to: "load it up, five to six turns".
  const paused = endsAt(reader, amount.first - 1)
  const total: Meaning = { about: 'total', low: amount.low, high: amount.high }
  return read(last + 1, paused ? { ...made, meanings: [made.meanings[0], total] } : made)
}

/** "leave a quarter on", "keep two turns on there": what stays, which is a place on the scale. */
function leftOn(reader: Reader, at: number, verb: string, amount: Amount): Reading | null {
  if (!/^(?:leave|keep)$/.test(verb) || !/^(?:on|behind)$/.test(wordAfter(reader, amount.next - 1))) return null
  if (!(amount.named || amount.fraction) || leadsElsewhere(reader, amount.next)) return null
  return read(
    amount.next + 1,
    claim(reader, at, amount.next, [{ about: 'total', low: amount.low, high: amount.high }], amountSlots(reader, amount)),
  )
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
    return !/^(?:knob|wheel|dial|bike|resistance|gear|drop|chorus|top|flywheel|beat|one)$/.test(wordAt(reader, at + 2))
  return after === 'each' || after === 'every' || after === 'my'
}

/** "half a turn on", "another quarter", "+¾", "minus one and a quarter", "half a turn, then push". */
export const readChange: Rule = (reader, at) => {
  const amount = amountAt(reader, at)
  const signed = signBefore(reader, at)
  // "Two for two on bad jokes" is a score, "one on one" a fight.
  if (
    amount !== null &&
    wordAfter(reader, amount.next - 1) === 'on' &&
    !endsAt(reader, amount.next) &&
    numberAt(reader.tokens, amount.next + 1)
  )
    return null
  if (amount === null || amount.low === 0 || (wordBefore(reader, at) === 'for' && numberAt(reader.tokens, at - 2)?.next === at - 1))
    return null
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
  if (sign !== 0 && amount.plain && /^(?:on|off|heavier|lighter)$/.test(way) && !elsewhere(reader, amount, orMore)) {
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
  const { next, named, fraction, plain } = amount
  if (endsAt(reader, next - 1)) return null
  const back = wordAt(reader, next) === 'back' && !endsAt(reader, next) ? 1 : 0
  const told = named || fraction
  const side = says(reader, next + back, 'to the|your right|left')
    ? 3 + back
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
  // "Three quarters is all I'm adding", "a half added this time".
  const given = says(reader, next, "is all i'm|we're|you're|i'll") ? next + 3 : next
  if (/^(?:adding|added)$/.test(wordAt(reader, given)) && closes(reader, given)) return { sign: 1, next: given + 1 }
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
    (before === 'for' && /^(?:looking|asking|calling|aiming|shooting|going)$/.test(wordBefore(reader, at - 1))) ||
    // "Make it half a turn."
    (before === 'it' && /^(?:make|call)$/.test(wordBefore(reader, at - 1)))
  const under = says(reader, amount.next, 'under|beneath you|us|your') && !endsAt(reader, amount.next - 1)
  if (!amount.named || amount.plain || !opens || wordAfter(reader, amount.next - 1) === 'of') return null
  // "Two turns is your jump gear."
  const told = says(reader, amount.next, 'is your|our|the') && !endsAt(reader, amount.next - 1)
  if (!under && !told && !closes(reader, amount.next - 1)) return null
  const total: Meaning = { about: 'total', low: amount.low, high: amount.high }
  const change: Meaning = { about: 'change', low: amount.low, high: amount.high }
  const meanings: Meanings = amount.low < amount.high || told || under ? [total, change] : [change, total]
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
