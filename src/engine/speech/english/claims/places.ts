import type { Meaning } from '#engine/cues/claims/claim.ts'
import { isWas, placeBehindEnd } from './done.ts'
import { numberAt } from './numberAt.ts'
import {
  claim,
  closes,
  endsAt,
  type Meanings,
  numberSlot,
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
import { singular } from './singular.ts'
import { NO_KIND, ORDINALS, PLURALS, SAFE_AFTER, wordSet } from './words.ts'

const ONES = wordSet("one ones one's")
/** What may follow "last one": "the last one in gets the fan" is about no block. */
const AFTER_LAST = wordSet('next now go coming of up here and then for to before everything all is give let make')

/** "first of three", "push two of three", "third and last", "next to last", "last push": a place in a row. */
export const readPlace: Rule = (reader, at) => compared(reader, at) ?? placeAt(reader, at)

const placeAt: Rule = (reader, at) => fromTheEnd(reader, at) ?? ordinal(reader, at) ?? numberOf(reader, at) ?? lastOne(reader, at)

const COMPARED = /^(?:as|like|than|since|from|beat|match|matches|unlike)$/

/** "same as the last one", "bigger than push one", "like on our second": what something is held against is not what comes. */
function compared(reader: Reader, at: number): Reading | null {
  let lead = at
  while (/^(?:the|that|our|your|my|on|in|for)$/.test(wordBefore(reader, lead))) lead--
  if (!COMPARED.test(wordBefore(reader, lead))) return null
  const place = placeAt(reader, at) ?? readNamedPlace(reader, at)
  return place && read(place.next)
}

/** "next to last", "second to last", "penultimate", "last but one". */
function fromTheEnd(reader: Reader, at: number): Reading | null {
  const back = says(reader, at, 'next to last') ? 1 : says(reader, at, 'last but one') ? 1 : wordAt(reader, at) === 'penultimate' ? 1 : null
  const place = ordinalAt(reader, at)
  const told = back ?? (place && says(reader, place.next, 'to|from last') && !endsAt(reader, place.next - 1) ? place.value - 1 : null)
  if (told === null || told < 1) return null
  const end = wordAt(reader, at) === 'penultimate' ? at + 1 : at + 3
  const kind = kindAfter(reader, end)
  return read(kind.next, claim(reader, at, kind.next - 1, [{ about: 'last', back: told, ...kind.is }]))
}

/** "first of three", "third and last", "second push". */
function ordinal(reader: Reader, at: number): Reading | null {
  const place = ordinalAt(reader, at)
  if (place === null) return null
  const { value, next, figures } = place
  const slots = [slot(reader, at, next - 1, { as: 'ordinal', figures })]
  if (endsAt(reader, next - 1)) {
    // "Here is the second."
    const told = isTold(reader, at) && !(value === 1 && /^(?:your|my)$/.test(wordBefore(reader, at)))
    return told ? read(next, claim(reader, at, next - 1, [{ about: 'place', value }], slots)) : null
  }
  if (says(reader, next, 'and last|final')) {
    const kind = kindAfter(reader, next + 2)
    return read(kind.next, claim(reader, at, kind.next - 1, [{ about: 'last', back: 0, value, ...kind.is }], slots))
  }
  const kind = kindAfter(reader, next)
  // "First one to smile", "first one who laughs" is somebody.
  if (kind.next > next && !endsAt(reader, kind.next - 1) && /^(?:to|who|that|in)$/.test(wordAt(reader, kind.next))) return null
  const behind = placeBehindEnd(reader, kind.next)
  if (behind !== null) return read(behind, claim(reader, at, behind - 1, [{ about: 'done', value, ...kind.is }], slots))
  const of = ofAt(reader, kind.next)
  if (of !== null) {
    return read(of.next, claim(reader, at, of.next - 1, [{ about: 'place', value, of: of.value, ...kind.is }], [...slots, of.slot]))
  }
  // "Second one": a bare "second" may be a moment.
  if (kind.is.kind === undefined && kind.next === next) return null
  if (isWas(reader, at)) return read(kind.next, claim(reader, at, kind.next - 1, [{ about: 'done', value, ...kind.is }], slots))
  return read(kind.next, claim(reader, at, kind.next - 1, [{ about: 'place', value, ...kind.is }], slots))
}

/** "here's our third", "onto your second", "this is the last": a place without a noun is one only where it is pointed at. */
const isTold = (reader: Reader, at: number): boolean =>
  /^(?:the|our|your|my)$/.test(wordBefore(reader, at)) &&
  (POINTING.test(wordBefore(reader, at - 1)) ||
    // "Welcome to our third", "on to your second".
    (wordBefore(reader, at - 1) === 'to' && /^(?:welcome|on|us|up|over|right)$/.test(wordBefore(reader, at - 2))))

const POINTING = /^(?:is|that's|here's|it's|comes|this|this'll|be|becomes|makes|onto|into|now|with|starts|begins|hitting|start)$/

function ordinalAt(reader: Reader, at: number): { value: number; next: number; figures: boolean } | null {
  const value = ORDINALS.indexOf(wordAt(reader, at))
  if (value > 0) return { value, next: at + 1, figures: false }
  const touches = /^\d{1,2}$/.test(wordAt(reader, at)) && reader.tokens[at + 1]?.from === reader.tokens[at]!.to
  return touches && /^(?:st|nd|rd|th)$/.test(wordAt(reader, at + 1))
    ? { value: Number(wordAt(reader, at)), next: at + 2, figures: true }
    : null
}

/** "one of three", "number two of three", "1 of 3"; "that was one of three" is what is done. */
function numberOf(reader: Reader, at: number): Reading | null {
  const led = wordAt(reader, at) === 'number' && !endsAt(reader, at)
  const start = led ? at + 1 : at
  const number = numberAt(reader.tokens, start)
  if (number === null || number.fraction) return null
  const own = numberSlot(reader, start, number.next, number.figures)
  // "Eleven out of ten" is praise, where it is no effort.
  if (says(reader, number.next, 'out of ten|10') || says(reader, number.next, 'outta ten|10')) return null
  // "One of the three" is any of them.
  const of = says(reader, number.next, 'of the|our|your|these|those') ? null : ofAt(reader, number.next)
  if (of === null) {
    // "You're number one", "my number one" is a compliment.
    if (!led || number.value < 1 || !closes(reader, number.next - 1) || PERSONAL.test(wordBefore(reader, at)) || isCalled(reader, at))
      return null
    return read(number.next, claim(reader, at, number.next - 1, [{ about: 'place', value: number.value }], [own]))
  }
  const was = /^(?:was|that's|there's|were)$/.test(wordBefore(reader, at))
  const meaning: Meaning = { about: was ? 'done' : 'place', value: number.value, of: of.value }
  return read(of.next, claim(reader, at, of.next - 1, [meaning], [own, of.slot]))
}

/** "kill it, number nine": somebody is called, unless what stands before points at what comes. */
function isCalled(reader: Reader, at: number): boolean {
  if (!startsAt(reader, at) || at === 0 || reader.tokens[at - 1]!.stops) return false
  for (let place = at - 1; place >= Math.max(0, at - 8) && !reader.tokens[place]!.stops; place--) {
    if (/^(?:here|here's|this|that's|go|next|okay|ok|alright|push|surge|hill|climb|now|up|and|so)$/.test(wordAt(reader, place)))
      return false
  }
  return true
}

const PERSONAL = /^(?:you're|i'm|he's|she's|they're|we're|you|my|your|our|are|am|still|be)$/

/** "of three", "out of three", with nothing that it is three of but a kind of block. */
function ofAt(reader: Reader, at: number) {
  const joint = says(reader, at, 'out of') ? at + 1 : at
  if (!/^(?:of|outta|outa)$/.test(wordAt(reader, joint)) || endsAt(reader, joint) || endsAt(reader, at - 1)) return null
  const led = /^(?:our|the|your|these|those)$/.test(wordAt(reader, joint + 1)) && !endsAt(reader, joint + 1) ? joint + 2 : joint + 1
  const number = numberAt(reader.tokens, led)
  if (number === null || number.fraction || number.value < 2 || number.value > 40) return null
  if (!closes(reader, number.next - 1)) return null
  return { value: number.value, next: number.next, slot: numberSlot(reader, led, number.next, number.figures, { figure: 'of' }) }
}

/** "last one", "last push", "final round"; not "last thirty" nor "last eight". */
function lastOne(reader: Reader, at: number): Reading | null {
  const word = wordAt(reader, at)
  const only = word === 'only' && /^(?:the|our|your)$/.test(wordBefore(reader, at)) && POINTING.test(wordBefore(reader, at - 1))
  if (only && !endsAt(reader, at) && closes(reader, at + 1)) return onlyOne(reader, at)
  if (word !== 'last' && word !== 'final') return null
  if (endsAt(reader, at))
    return word === 'last' && isTold(reader, at) ? read(at + 1, claim(reader, at, at, [{ about: 'last', back: 0 }])) : null
  const noun = wordAt(reader, at + 1)
  const after = wordAfter(reader, at + 1)
  if (ONES.has(noun)) {
    const row = noun === 'one' ? ofAt(reader, at + 2) : null
    if (row !== null) return read(row.next, claim(reader, at, row.next - 1, [{ about: 'last', back: 0, of: row.value }], [row.slot]))
    return noun === 'one' && (after === '' || AFTER_LAST.has(after))
      ? read(at + 2, claim(reader, at, at + 1, [{ about: 'last', back: 0, ...(isWas(reader, at) && { past: true as const }) }]))
      : null
  }
  const of = ofAt(reader, at + 1)
  if (of !== null) return read(of.next, claim(reader, at, of.next - 1, [{ about: 'last', back: 0, of: of.value }], [of.slot]))
  const number = numberAt(reader.tokens, at + 1)
  if (number !== null) return lastFew(reader, at, number)
  if (PLURALS.has(noun) || NO_KIND.has(noun) || !/^\p{L}{3,}$/u.test(noun)) return null
  const kind = singular(noun)
  const past = isWas(reader, at) && { past: true as const }
  return kind === noun ? read(at + 2, claim(reader, at, at + 1, [{ about: 'last', back: 0, kind, ...past }])) : null
}

/** "this is the only push": the first of its row, and the last. */
function onlyOne(reader: Reader, at: number): Reading | null {
  const noun = wordAt(reader, at + 1)
  if (NO_KIND.has(noun) || PLURALS.has(noun) || !/^\p{L}{3,}$/u.test(noun)) return null
  return read(at + 2, claim(reader, at, at + 1, [{ about: 'last', back: 0, value: 1, kind: singular(noun) }]))
}

/** "last two pushes", "last two". */
function lastFew(reader: Reader, at: number, number: { value: number; next: number; fraction: boolean; figures: boolean }): Reading | null {
  if (number.fraction || number.value < 2 || number.value > 7) return null
  const kind = kindAfter(reader, number.next)
  if (kind.is.kind === undefined && !(wordAfter(reader, number.next - 1) === '')) return null
  // "Last five" may be the seconds, the counts or the eights that are left.
  const { value } = number
  const more: Meaning = { about: 'more', value, ...kind.is }
  const meanings: Meanings =
    kind.is.kind !== undefined
      ? [more]
      : [
          more,
          { about: 'left', unit: 'seconds', value },
          { about: 'left', unit: 'counts', value },
          { about: 'left', unit: 'counts', value: 8 * value },
        ]
  return read(kind.next, claim(reader, at, kind.next - 1, meanings, [numberSlot(reader, at + 1, number.next, number.figures)]))
}

/** "surge two", "push number two", "hill one"; it gives way to whatever else the number is read as. */
export const readNamedPlace: Rule = (reader, at) => {
  const word = wordAt(reader, at)
  if (endsAt(reader, at) || NO_KIND.has(word) || word === 'middle' || !/^\p{L}{3,}$/u.test(word) || numberAt(reader.tokens, at) !== null)
    return null
  const start = wordAt(reader, at + 1) === 'number' ? at + 2 : at + 1
  const number = numberAt(reader.tokens, start)
  if (number === null || number.fraction || number.value < 1 || number.value > 20) return null
  const of = ofAt(reader, number.next)
  if (of === null && !number.figures && !closes(reader, number.next - 1)) return null
  const next = of?.next ?? number.next
  const own = numberSlot(reader, start, number.next, number.figures)
  const kind = singular(word)
  return read(
    next,
    claim(reader, at, next - 1, [{ about: 'place', value: number.value, kind, ...(of && { of: of.value }) }], of ? [own, of.slot] : [own]),
  )
}

/** The kind of block named at a token, "one" for none in particular, and the token after it. */
function kindAfter(reader: Reader, at: number): { is: { kind?: string }; next: number } {
  if (endsAt(reader, at - 1)) return { is: {}, next: at }
  const word = wordAt(reader, at)
  if (ONES.has(word)) return { is: {}, next: at + 1 }
  if (NO_KIND.has(word) || SAFE_AFTER.has(word) || PLURALS.has(word) || !/^\p{L}{3,}$/u.test(word) || numberAt(reader.tokens, at))
    return { is: {}, next: at }
  return { is: { kind: singular(word) }, next: at + 1 }
}
