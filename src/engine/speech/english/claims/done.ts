import type { Meaning } from '#engine/cues/claims/claim.ts'
import { numberAt } from './numberAt.ts'
import {
  claim,
  closes,
  endsAt,
  isUnit,
  numberSlot,
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
import { singular } from './singular.ts'
import { NO_KIND, wordSet } from './words.ts'

/** More of anything than this is no row of efforts. */
const MOST = 20

/** "you've done two pushes", "you just knocked out six surges", "all three pushes done", "that's two rounds in the books": what is behind. */
export const readDone: Rule = (reader, at) => {
  const number = numberAt(reader.tokens, at)
  if (number === null || number.fraction || number.value > MOST) return null
  const all = wordBefore(reader, at) === 'all'
  const first = all ? at - 1 : at
  const led = finishedBefore(reader, first)
  const pointed = pointedAt(reader, first)
  const named = thing(reader, at, number.next)
  const behind = endsAt(reader, named.next - 1) ? behindAfterPause(reader, named.next) : behindEnd(reader, named.next)
  const joint = says(reader, number.next, 'out of') ? number.next + 1 : number.next
  const out = !endsAt(reader, number.next - 1) && says(reader, joint, 'of') ? outOf(reader, joint) : null
  const made = (last: number, meaning: Meaning, noun?: number) =>
    read(
      last + 1,
      claim(reader, at, last, [meaning], [numberSlot(reader, at, number.next, number.figures, noun === undefined ? {} : { noun })]),
    )
  // "Three of three are done."
  if (out !== null) return made(out.next - 1, { about: 'done', value: number.value, of: out.of })
  const kind = named.kind && { kind: named.kind }
  // "Fifteen down" may be seconds, "two down" turns.
  const bareDown = named.kind === undefined && says(reader, named.next, 'down')
  if (behind !== null && !bareDown) return made(behind - 1, { about: 'done', value: number.value, ...kind }, named.noun)
  if (led && (named.kind !== undefined || all || closes(reader, named.next - 1))) {
    return made(named.next - 1, { about: 'done', value: number.value, ...kind }, named.noun)
  }
  // "That's all three."
  if (pointed && all && number.value > 1 && endsAt(reader, number.next - 1))
    return made(number.next - 1, { about: 'done', value: number.value })
  // "That makes two": with the one that begins, or without it.
  if (pointed && wordBefore(reader, at) === 'makes' && closes(reader, number.next - 1)) {
    const slots = [numberSlot(reader, at, number.next, number.figures)]
    return read(
      number.next,
      claim(
        reader,
        at,
        number.next - 1,
        [
          { about: 'done', value: number.value },
          { about: 'place', value: number.value },
        ],
        slots,
      ),
    )
  }
  // "That's two pushes": before the first of them it is how many will come.
  if (pointed && named.kind !== undefined && (endsAt(reader, named.next - 1) || closes(reader, named.next - 1))) {
    const { noun } = named
    return read(
      named.next,
      claim(
        reader,
        at,
        named.next - 1,
        [
          { about: 'done', value: number.value, ...kind },
          { about: 'ahead', value: number.value, ...kind, fresh: true },
        ],
        [numberSlot(reader, at, number.next, number.figures, noun === undefined ? {} : { noun })],
      ),
    )
  }
  return null
}

/** "that was number three": what is behind, by its number. */
export const readWasNumber: Rule = (reader, at) => {
  if (wordAt(reader, at) !== 'was' || wordBefore(reader, at) !== 'that' || endsAt(reader, at)) return null
  const kind = wordAt(reader, at + 1)
  const led = kind === 'number' ? at + 2 : !NO_KIND.has(kind) && wordAt(reader, at + 2) === 'number' ? at + 3 : at + 2
  const number = numberAt(reader.tokens, led)
  if (number === null || number.fraction || number.value < 1 || number.value > MOST || !closes(reader, number.next - 1)) return null
  const named = kind === 'number' ? {} : { kind: singular(kind) }
  if (kind !== 'number' && (NO_KIND.has(kind) || !/^\p{L}{3,}$/u.test(kind) || numberAt(reader.tokens, at + 1))) return null
  const slots = [slot(reader, led, number.next - 1, { as: 'number', figures: number.figures, per: 1 })]
  return read(number.next, claim(reader, at, number.next - 1, [{ about: 'done', value: number.value, ...named }], slots))
}

/** What is counted: "pushes", "of those pushes", "of 'em", "big surges"; nothing where the number stands by itself. */
function thing(reader: Reader, at: number, next: number): { kind?: string; noun?: number; next: number } {
  if (endsAt(reader, next - 1)) return { next }
  let place = next
  if (says(reader, place, 'of these|those|them|em|our|the|your')) {
    place += 2
    if (endsAt(reader, place - 1)) return { next: place }
  }
  for (const noun of [place, place + 1]) {
    const word = wordAt(reader, noun)
    if (word === '' || NO_KIND.has(word) || isUnit(reader, word) || !/^\p{L}{3,}$/u.test(word) || numberAt(reader.tokens, noun)) break
    const one = numberAt(reader.tokens, at)!.value === 1
    if (/[^s]s$/.test(word) || (one && noun === place)) return { kind: singular(word), noun, next: noun + 1 }
    if (endsAt(reader, noun)) break
  }
  return { next: place }
}

/** Having done something: with "you", "we" and the like before them. */
const FINISHING = [
  'done',
  'did',
  'finished',
  'completed',
  'crushed',
  'nailed',
  'survived',
  'conquered',
  'banked',
  'earned',
  'pushed',
  'knocked out',
  'put away',
  'checked off',
  'wrapped up',
  'made it through',
  'gotten through',
  'got through',
  'come through',
  'went through',
  'powered through',
  'been through',
  'ridden through',
]
const WHO = wordSet("you've we've you we y'all y'all've everybody everyone just already now have all has both")

function finishedBefore(reader: Reader, first: number): boolean {
  return FINISHING.some((words) => {
    const start = first - words.split(' ').length
    return (
      start > 0 &&
      says(reader, start, words) &&
      !endsAt(reader, first - 1) &&
      !endsAt(reader, start - 1) &&
      WHO.has(wordAt(reader, start - 1))
    )
  })
}

/** "that's two pushes", "that makes two pushes", "this was three". */
const pointedAt = (reader: Reader, first: number): boolean =>
  wordBefore(reader, first) === "that's" ||
  (/^(?:makes|was)$/.test(wordBefore(reader, first)) && /^(?:that|this|which)$/.test(wordBefore(reader, first - 1)))

const BEHIND = [
  'behind you|us',
  'in the|your|our books|bank|bag|pocket|pockets|can|legs',
  'under your|our belt|belts',
  'out of the way',
  'in the rearview',
  'done and dusted',
  'done',
  'finished',
  'complete',
  'completed',
  'gone',
  'over',
  'down',
]

/** "that was our third push": what is behind, though it is told by its place. */
export const isWas = (reader: Reader, at: number): boolean => {
  const lead = /^(?:the|our|your)$/.test(wordBefore(reader, at)) ? at - 1 : at
  return wordBefore(reader, lead) === 'was' && wordBefore(reader, lead - 1) === 'that'
}

/** Where what makes a place in a row one that is behind ends: "our second one done"; null without it. */
export const placeBehindEnd = (reader: Reader, at: number): number | null => (endsAt(reader, at - 1) ? null : behindEnd(reader, at))

/** Where "(are) (already) done", "behind us", "in the books" ends; null without it. */
function behindEnd(reader: Reader, at: number): number | null {
  let start = at
  while (/^(?:are|is|now|all|already|officially|both|safely)$/.test(wordAt(reader, start)) && !endsAt(reader, start)) start++
  const words = BEHIND.find((one) => says(reader, start, one))
  if (words === undefined) return null
  const next = start + words.split(' ').length
  // "Two pushes done right", "over the top": told of how.
  return closes(reader, next - 1) || /^(?:already|now)$/.test(wordAfter(reader, next - 1)) ? next : null
}

/** "three surges, finished", "two pushes, all done": after a comma, and with nothing else in the clause. */
function behindAfterPause(reader: Reader, at: number): number | null {
  if (reader.tokens[at - 1]!.stops || !startsAt(reader, at)) return null
  const next = behindEnd(reader, at)
  return next !== null && endsAt(reader, next - 1) ? next : null
}

/** "of three are done": null where more is said of them. */
function outOf(reader: Reader, at: number): { of: number; next: number } | null {
  const of = numberAt(reader.tokens, at + 1)
  if (of === null || of.fraction || of.value < 2 || of.value > MOST || endsAt(reader, of.next - 1)) return null
  // "Three out of four surges are done."
  const noun = /^\p{L}{3,}s$/u.test(wordAt(reader, of.next)) && !NO_KIND.has(wordAt(reader, of.next)) ? 1 : 0
  const behind = endsAt(reader, of.next + noun - 1) ? null : behindEnd(reader, of.next + noun)
  return behind === null ? null : { of: of.value, next: behind }
}
