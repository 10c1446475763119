import type { Meaning } from '#engine/cues/claims/claim.ts'
import { comingEnd } from './coming.ts'
import { isMoving } from './moves.ts'
import { type NumberPhrase, numberAt } from './numberAt.ts'
import {
  claim,
  closes,
  endsAt,
  isKnob,
  isUnit,
  type Meanings,
  numberSlot,
  type Reader,
  type Reading,
  type Rule,
  read,
  says,
  startsAt,
  wordAfter,
  wordAt,
  wordBefore,
} from './reader.ts'
import { singular } from './singular.ts'
import { timeAt } from './timeAt.ts'
import { BODY, MINUTE_UNITS, NO_KIND, SECOND_UNITS } from './words.ts'

/** More of anything than this is no row of efforts. */
const MOST = 20

/** "three rounds", "three pushes", "two more after this", "one left", "one down": how many there are, are to come or are done. */
export const readCount: Rule = (reader, at) => {
  if (wordAt(reader, at) === 'twice')
    return closes(reader, at) && isRepeated(reader, at, at + 1)
      ? read(at + 1, claim(reader, at, at, [{ about: 'rounds', value: 2 }]))
      : null
  const set = setOf(reader, at)
  if (set !== null) return set
  const number = numberAt(reader.tokens, at) ?? coupleAt(reader, at)
  if (number === null || number.fraction || number.value > MOST) return null
  // "Gimme five" is a slap of hands.
  if (number.value === 5 && /^(?:gimme|me)$/.test(wordBefore(reader, at)) && !wordAt(reader, number.next).startsWith('more'))
    return read(number.next)
  return counted(reader, at, number)
}

/** "a set of six": of rounds, of efforts that come, or of a move. */
function setOf(reader: Reader, at: number): Reading | null {
  if (!says(reader, at, 'set of')) return null
  const number = numberAt(reader.tokens, at + 2)
  if (number === null || number.fraction || number.value < 2 || number.value > MOST || !closes(reader, number.next - 1)) return null
  const { value, next, figures } = number
  const meanings: Meanings = [
    { about: 'rounds', value },
    { about: 'ahead', value },
    { about: 'repeats', value },
  ]
  return read(next, claim(reader, at, next - 1, meanings, [numberSlot(reader, at + 2, next, figures)]))
}

/** "a couple of pushes", "a couple more", "a pair of surges". */
function coupleAt(reader: Reader, at: number): NumberPhrase | null {
  if (!says(reader, at, 'a couple|pair')) return null
  const of = says(reader, at, 'a couple|pair of') ? 1 : 0
  return { value: 2, next: at + 2 + of, figures: false, fraction: false }
}

function counted(reader: Reader, at: number, number: NumberPhrase): Reading | null {
  const { value, next, figures } = number
  if (endsAt(reader, next - 1)) return thatIs(reader, at, number)
  const own = (noun?: number) => [numberSlot(reader, at, next, figures, noun === undefined ? {} : { noun })]
  const made = (last: number, meanings: Meanings, noun?: number) => read(last + 1, claim(reader, at, last, meanings, own(noun)))
  const word = wordAt(reader, next)
  const more = word === 'more'
  // "You versus the one ahead."
  if (value === 1 && /^(?:the|that|this|every|any|each|no)$/.test(wordBefore(reader, at)) && stillAfter(reader, next, false) !== null)
    return null
  const thing = more ? next + 1 : next
  const noun = more && endsAt(reader, next) ? '' : wordAt(reader, thing)
  if (!more && says(reader, next, 'of|like these|those|them|this')) {
    // "Surges done, all four of them" says no more than the row.
    // "Worth ten of these" counts nothing.
    if (/^(?:all|worth|like|than)$/.test(wordBefore(reader, at))) return null
    if (closes(reader, next + 1)) return value < 2 ? null : made(next + 1, [{ about: 'ahead', value }])
    // "Five of these bad boys" are five of these.
    const nick = NICKNAMES.find((words) => says(reader, next + 2, words))
    if (nick !== undefined && value > 1) return made(next + 1 + nick.split(' ').length, [{ about: 'ahead', value }])
    // "Three of these surges all together."
    const kind = wordAt(reader, next + 2)
    if (value > 1 && /^\p{L}{3,}s$/u.test(kind) && !NO_KIND.has(kind) && !endsAt(reader, next + 1))
      return made(next + 2, [{ about: 'ahead', value, kind: singular(kind) }], next + 2)
  }
  if (more) {
    const like = likeEnd(reader, next + 1)
    if (like !== null) return made(like.next - 1, [{ about: 'more', value, ...(like.after && { after: true as const }) }])
  }
  if (/^(?:rounds?|sets?)$/.test(noun)) return rounds(reader, at, number, thing, more)
  if (/^reps?$/.test(noun) && closes(reader, thing)) {
    const row: Meanings = [
      { about: 'rounds', value },
      { about: 'ahead', value },
      { about: 'repeats', value },
    ]
    return made(thing, more ? [{ about: 'more', value }] : row, thing)
  }
  if (/^(?:times|x)$/.test(noun)) {
    // "Four times thirty seconds"; "ten times harder" counts nothing.
    const each = !more && !endsAt(reader, thing) && timeAt(reader, thing + 1) !== null
    if (!each && (!closes(reader, thing) || /^(?:as|harder|better|stronger|easier)$/.test(wordAfter(reader, thing)))) return null
    if (more) return made(thing, [{ about: 'more', value }])
    if (!each && !isRepeated(reader, at, thing + 1)) return null
    return made(thing, movesBefore(reader, at) ? [{ about: 'repeats', value }] : [{ about: 'rounds', value }])
  }
  if (!more && word === 'down' && (endsAt(reader, next) || /^(?:and|already)$/.test(wordAfter(reader, next)))) {
    return made(next, [{ about: 'done', value }, ...(isKnob(reader) ? [] : [{ about: 'change', low: -value, high: -value } as Meaning])])
  }
  if (!more && word === 'done' && closes(reader, next)) return made(next, [{ about: 'done', value }])
  const tail = stillAfter(reader, more ? next + 1 : next, more && endsAt(reader, next))
  if (tail !== null || (more && closes(reader, next))) {
    if (!isKnob(reader) && tail === null) return null
    const last = (tail?.next ?? next + 1) - 1
    return made(last, bare(value, tail?.after === true || isAfterThis(reader, at)))
  }
  return kinds(reader, at, number, thing, more, own)
}

/** What leaders call the efforts of a row. */
const NICKNAMES = ['bad boys|girls', 'beauties|babies|puppies|suckers|guys|monsters']

/** What is done several times is an effort or a round: "four times through", "we surge three times", "do it twice". */
function isRepeated(reader: Reader, at: number, next: number): boolean {
  if (
    startsAt(reader, at) &&
    (endsAt(reader, next - 1) || /^(?:through|around|over|total|altogether|we|you|y'all|and|then|for|of)$/.test(wordAt(reader, next)))
  )
    return !says(reader, next, 'out of') && !says(reader, next, 'of ten')
  for (let place = at - 1; place >= at - 6 && place >= 0 && !endsAt(reader, place); place--) {
    if (/^(?:roll|roller|back|say|said|blink|clap|pat|tap|squeeze|breathe|inhale|exhale)$/.test(wordAt(reader, place))) return false
    if (REPEATING.test(wordAt(reader, place)) || isMoving(wordAt(reader, place))) return true
  }
  return /^(?:through|around|total|altogether)$/.test(endsAt(reader, next - 1) ? '' : wordAt(reader, next))
}

const REPEATING =
  /^(?:do|doing|go|going|goes|run|running|repeat|repeating|repeats|push|pushing|surge|surging|sprint|sprinting|climb|climbing|ride|hit|hitting|happens|it's|that's|through|round|rounds|gonna|will)$/

/** "come up four times", "you'll jump ten times": how often the move is done. */
function movesBefore(reader: Reader, at: number): boolean {
  for (let place = at - 1; place >= at - 3 && place >= 0 && !endsAt(reader, place); place--) {
    if (isMoving(wordAt(reader, place)) && wordAt(reader, place) !== 'go' && wordAt(reader, place) !== 'going') return true
  }
  return false
}

/** "after this there's two more". */
function isAfterThis(reader: Reader, at: number): boolean {
  for (let place = at - 2; place >= at - 6 && place >= 0 && !reader.tokens[place]!.stops; place--) {
    if (says(reader, place, 'after this') && !reader.tokens[place + 1]!.stops) return true
  }
  return false
}

/** What "two more" or "four to go" may count besides the row of efforts: the counts or the repeats that are left. */
const bare = (value: number, after: boolean): Meanings => [
  { about: 'more', value, ...(after && { after: true as const }) },
  ...(after
    ? []
    : ([
        { about: 'left', unit: 'counts', value, midway: true },
        { about: 'left', unit: 'counts', value: 8 * value, midway: true },
      ] as const)),
]

function rounds(reader: Reader, at: number, { value, next, figures }: NumberPhrase, noun: number, more: boolean): Reading {
  const tail = stillAfter(reader, noun + 1, endsAt(reader, noun))
  const last = (tail?.next ?? noun + 1) - 1
  const meaning: Meaning =
    more || tail
      ? { about: 'more', value, kind: 'round', ...(tail?.after && { after: true as const }) }
      : { about: 'rounds', value, ...(/^set/.test(wordAt(reader, noun)) && { kind: 'set' as const }) }
  return read(last + 1, claim(reader, at, last, [meaning], [numberSlot(reader, at, next, figures, { noun })]))
}

/** "three pushes", "three small hills", "two pushes to go", "two more surges after this". */
function kinds(
  reader: Reader,
  at: number,
  { value }: NumberPhrase,
  thing: number,
  more: boolean,
  own: (noun?: number) => ReturnType<typeof numberSlot>[],
): Reading | null {
  for (const place of [thing, thing + 1]) {
    const word = wordAt(reader, place)
    if (
      word === '' ||
      NO_KIND.has(word) ||
      isUnit(reader, word) ||
      SECOND_UNITS.has(word) ||
      MINUTE_UNITS.has(word) ||
      (place > thing && endsAt(reader, place - 1))
    )
      return null
    const tail = stillAfter(reader, place + 1, endsAt(reader, place))
    if (!/s$/.test(word) && tail === null && !(more || value === 1)) continue
    if (!/^\p{L}{3,}$/u.test(word)) return null
    const kind = singular(word)
    const behind = more || endsAt(reader, place) ? null : behindEnd(reader, place + 1)
    if (behind !== null && tail === null) return read(behind, claim(reader, at, behind - 1, [{ about: 'done', value, kind }], own(place)))
    if (more || tail || stillBefore(reader, at)) {
      const last = (tail?.next ?? place + 1) - 1
      return read(
        last + 1,
        claim(reader, at, last, [{ about: 'more', value, kind, ...(tail?.after && { after: true as const }) }], own(place)),
      )
    }
    if (value === 1 || value === 0) return null
    return read(
      place + 1,
      claim(
        reader,
        at,
        place,
        [
          { about: 'ahead', value, kind },
          { about: 'repeats', value },
        ],
        own(place),
      ),
    )
  }
  return null
}

/** Where "… just like this one", "… like it after this" ends, and whether what is ridden is not among them; null without it. */
function likeEnd(reader: Reader, at: number): { next: number; after: boolean } | null {
  if (endsAt(reader, at - 1)) return null
  const like = /^(?:just|exactly|right)$/.test(wordAt(reader, at)) ? at + 1 : at
  // "Two more where that came from."
  if (says(reader, at, 'where that|those|this came from')) return { next: at + 4, after: false }
  if (!says(reader, like, 'like this|that|it|these|those|them')) return null
  const one = /^(?:one|ones)$/.test(wordAfter(reader, like + 1)) ? like + 3 : like + 2
  const tail = stillAfter(reader, one, endsAt(reader, one - 1))
  return { next: tail?.next ?? one, after: tail?.after === true || wordAt(reader, like + 1) === 'this' }
}

/** "still three pushes", "we've still got three pushes". */
const stillBefore = (reader: Reader, at: number): boolean =>
  wordBefore(reader, at) === 'still' ||
  (/^(?:got|have|has|got to do)$/.test(wordBefore(reader, at)) && wordBefore(reader, at - 1) === 'still')

/** Where "… are behind us", "… in the books" ends; null without it. */
function behindEnd(reader: Reader, at: number): number | null {
  const start = says(reader, at, 'are|is') && !endsAt(reader, at) ? at + 1 : at
  if (says(reader, start, 'behind you|us')) return start + 2
  return says(reader, start, 'in the|your|our books|bank|bag|pocket|pockets') ? start + 3 : null
}

/** "left", "to go", "after this (one)", "remaining" at a token of the same clause. */
function stillAfter(reader: Reader, at: number, ended: boolean): { next: number; after?: true } | null {
  if (ended) return null
  const word = wordAt(reader, at)
  if (word === 'left' || word === 'remaining') {
    if (BODY.has(wordAfter(reader, at))) return null
    if (says(reader, at, 'left|remaining after this|that')) return { next: afterThis(reader, at + 1), after: true }
    return { next: at + 1 }
  }
  const toCome = comingEnd(reader, at)
  if (toCome !== null) return { next: toCome }
  if (says(reader, at, 'to go|come'))
    return says(reader, at + 2, 'after this|that') && !endsAt(reader, at + 1)
      ? { next: afterThis(reader, at + 2), after: true }
      : { next: at + 2 }
  if (says(reader, at, 'after|behind this|that')) return { next: afterThis(reader, at), after: true }
  return says(reader, at, 'to finish') ? { next: at + 2 } : null
}

/** The token after "after this", "after this one". */
const afterThis = (reader: Reader, at: number): number =>
  at + (/^(?:one|push|round|hill|climb|surge|effort|break|rest|recovery|song)$/.test(wordAfter(reader, at + 1)) ? 3 : 2)

/** "that's two". */
function thatIs(reader: Reader, at: number, { value, next, figures }: NumberPhrase): Reading | null {
  const before = wordBefore(reader, at)
  if (before !== "that's" && !(before === 'was' && wordBefore(reader, at - 1) === 'that')) return null
  // "Left foot, right foot, that's one" counts something else.
  const first = before === 'was' ? at - 2 : at - 1
  if (first > 2 && !reader.tokens[first - 1]!.stops) return null
  return read(next, claim(reader, at, next - 1, [{ about: 'done', value }], [numberSlot(reader, at, next, figures)]))
}
