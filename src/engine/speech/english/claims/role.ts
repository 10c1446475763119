import type { Bound, Subject, Target, Whole } from '#engine/cues/claims/claim.ts'
import { comingEnd } from './coming.ts'
import { isForDrinking, isOneOfSides } from './partOfTime.ts'
import { endsAt, type Reader, says, wordAfter, wordAt, wordBefore } from './reader.ts'
import { singular } from './singular.ts'
import { targetAfter, targetBefore } from './target.ts'
import { BODY, EASY, ENDS_UP, EVERY, HARD, MORE, NO_KIND } from './words.ts'

/** What a stretch of time or music is said to be, from the words around it. */
export interface Role {
  kind: 'length' | 'left' | 'gone' | 'until' | 'none'
  /** First token of the claim, and the one after it. */
  first: number
  next: number
  bound?: Bound
  of?: Whole
  on?: Subject
  /** "another thirty seconds": of what goes on or of what comes. */
  open?: true
  /** "eight counts, then we push": how long, or how soon. */
  change?: true
  /** What comes then, where the words say. */
  target?: Target
}

/**
 * The role of the time or music from `first` to `next`: how long something lasts, what is left, what is behind, what
 * comes when; `none` where it is one of many like it or belongs to no stretch of the ride.
 */
export function roleOf(reader: Reader, first: number, next: number, more: boolean, last = false): Role {
  const before = wordBefore(reader, first)
  const after = wordAfter(reader, next - 1)
  // "The first three minutes of climbing": as long at least.
  if (before === 'first' && wordAt(reader, next) === 'of' && !endsAt(reader, next - 1)) {
    const on = subjectOf(reader, first, next)
    if (on.kind !== undefined && endOfWhole(reader, next) === next) return { kind: 'length', first, next, bound: 'over', on }
  }
  if (EVERY.has(before) || before === 'first' || /^(?:later|apart|early|late|faster|slower|each way)$/.test(after)) {
    return { kind: 'none', first, next }
  }
  if (isOneOfSides(reader, first, next)) return { kind: 'none', first, next }
  // "Ten seconds longer than the last one."
  if (says(reader, next, 'longer|shorter|more|less|heavier|faster than') && !endsAt(reader, next - 1)) return { kind: 'none', first, next }
  const on = subjectOf(reader, first, next)
  const limit = boundBefore(reader, first)
  if (isSoFar(reader, first))
    return { kind: 'gone', first, next: endOfWhole(reader, next), ...wholeAfter(reader, next), ...(limit.bound && { bound: limit.bound }) }
  const timed = leftAfter(reader, next) !== null || goneAfter(reader, next, first) !== null
  // "Thirty seconds with your eyes closed", "grab your water, ten seconds": some of the time, which lasts as long at least.
  const partly = after === 'with' && !says(reader, next, 'with me|us')
  if (!timed && !limit.bound && ((partly && endOfWhole(reader, next) === next) || isForDrinking(reader, first, next)))
    return { kind: 'length', first, next, bound: 'over', on }
  if (limit.bound && !timed) return { kind: 'length', first: limit.first, next, bound: limit.bound, on }
  if (says(reader, next, 'or so|less|more') && !endsAt(reader, next - 1)) {
    const suffix = { so: 'near', less: 'under', more: 'over' } as const
    return { kind: 'length', first, next: next + 2, bound: suffix[wordAt(reader, next + 1) as keyof typeof suffix], on }
  }
  if (last || (before === 'last' && !isVerb(reader, first - 1)) || before === 'final') {
    return { kind: 'left', first: last ? first : first - 1, next: endOfWhole(reader, next), open: true, ...wholeAfter(reader, next) }
  }
  const gone = goneAfter(reader, next, first)
  const bound = limit.bound && { bound: limit.bound }
  if (gone !== null) return { kind: 'gone', first, next: gone, ...wholeAfter(reader, gone), ...bound }
  const left = leftAfter(reader, next)
  if (left !== null) {
    // The top is the hill's, whatever else ends later.
    const top = HEIGHTS.test(wordAt(reader, left - 1)) && { of: 'block' as const }
    return { kind: 'left', first, next: endOfWhole(reader, left), ...wholeAfter(reader, left), ...top, ...bound }
  }
  if (comesIn(reader, first, next)) {
    const target = targetBefore(reader, first - 1) ?? (endsAt(reader, next - 1) ? null : targetAfter(reader, next))
    return { kind: 'until', first: first - 1, next, ...(target && { target }) }
  }
  if (/^(?:until|till|til|before)$/.test(after)) {
    const target = targetAfter(reader, next)
    return { kind: 'until', first, next: next + 1, open: true, ...(target && { target }) }
  }
  const open = more || MORE.has(before) ? { open: true as const } : {}
  if (changeAfter(reader, next) !== null && before !== 'for') {
    const target = targetAfter(reader, next)
    return { kind: 'length', first, next, on, ...open, ...wholeAfter(reader, next), change: true, ...(target && { target }) }
  }
  return { kind: 'length', first, next, on, ...open, ...wholeAfter(reader, next) }
}

/** "it's gonna last", "they'll only last": not the last of anything. */
const isVerb = (reader: Reader, at: number): boolean =>
  /^(?:gonna|will|to|only|just|should|can|does|must|might|it'll|they'll|that'll|this'll|you'll|we'll)$/.test(wordBefore(reader, at))

/** "we've been at it for five minutes", "been climbing a minute and a half": what is behind. */
function isSoFar(reader: Reader, first: number): boolean {
  for (let at = first - 1; at >= first - 6 && at >= 0 && !endsAt(reader, at); at--) {
    if (wordAt(reader, at) === 'been') return true
    // "You've ridden for eight minutes", "you just rode for eight minutes".
    if (
      /^(?:ridden|rode|worked|climbed|pedaled|sweated|survived|lasted)$/.test(wordAt(reader, at)) &&
      /^(?:you've|we've|have|y'all've|already|now|just)$/.test(wordBefore(reader, at))
    )
      return true
  }
  return false
}

/** Where "… then we push", "… and we stand" begins; a comma may stand before it. Null without it. */
function changeAfter(reader: Reader, next: number): number | null {
  if (reader.tokens[next - 1]!.stops) return null
  const joint = wordAt(reader, next) === 'and' || wordAt(reader, next) === 'then'
  if (!joint || endsAt(reader, next)) return null
  const then = wordAt(reader, next) === 'and' && wordAt(reader, next + 1) === 'then' ? next + 2 : next + 1
  return /^(?:we|we're|we'll|you|you're|you'll|it|it's|i|i'm|everybody|everyone|y'all|the|here)$/.test(wordAt(reader, then)) ? next : null
}

/** "in twenty seconds we push"; not "locked in thirty seconds of work". */
const comesIn = (reader: Reader, first: number, next: number): boolean =>
  wordBefore(reader, first) === 'in' &&
  (endsAt(reader, next - 1) || /^(?:we|you|it|it's|i|the|that|from|everybody|everyone|time|they)$/.test(wordAt(reader, next))) &&
  !/^(?:all|done|get|squeeze)$/.test(wordBefore(reader, first - 1))

const BOUNDS: readonly (readonly [words: string, bound: Bound])[] = [
  ['under', 'under'],
  ['less than', 'under'],
  ['no more than', 'under'],
  ['not more than', 'under'],
  ['at most', 'under'],
  ['up to', 'under'],
  ['within', 'under'],
  ['just under', 'near'],
  ['just over', 'near'],
  ['a little over', 'near'],
  ['a bit over', 'near'],
  ['a little under', 'near'],
  ['over', 'over'],
  ['more than', 'over'],
  ['at least', 'over'],
  ['no less than', 'over'],
  ['nearly', 'near'],
  ['almost', 'near'],
  ['about', 'near'],
  ['around', 'near'],
  ['roughly', 'near'],
  ['close to', 'near'],
  ['some', 'near'],
]

/** The limits by their last word, the longest first. */
const BY_LAST_WORD = new Map<string, (readonly [words: string, bound: Bound])[]>()
for (const limit of [...BOUNDS].sort(([a], [b]) => b.length - a.length)) {
  const last = limit[0].split(' ').at(-1)!
  BY_LAST_WORD.set(last, [...(BY_LAST_WORD.get(last) ?? []), limit])
}

/** The limit said right before a number, and where it starts. */
function boundBefore(reader: Reader, first: number): { bound?: Bound; first: number } {
  for (const [words, bound] of BY_LAST_WORD.get(wordBefore(reader, first)) ?? []) {
    const start = first - words.split(' ').length
    if (start >= 0 && says(reader, start, words)) return { bound, first: start }
  }
  return { first }
}

/** "thirty seconds up, sixteen seconds down": two lengths, of which the second is the easy one. */
const isOtherHalf = (reader: Reader, first: number, next: number): boolean =>
  wordAfter(reader, next - 1) === 'down' &&
  /^(?:up|hard|on)$/.test(wordAt(reader, wordAt(reader, first - 1) === 'and' ? first - 2 : first - 1))

const HEIGHTS = /^(?:top|summit|crest|peak)$/

/** Where "… down", "… in", "… behind you" ends; null without it. */
function goneAfter(reader: Reader, next: number, first = next): number | null {
  const after = wordAfter(reader, next - 1)
  if (says(reader, next, 'in the bank|books|bag') && after !== '') return next + 3
  // "Two minutes into class"; "eight minutes of work behind you".
  if (after === 'into') return wholeAfter(reader, next).of === undefined ? null : next
  if (after === 'of' && /^(?:behind|down|done|gone|already)$/.test(wordAfter(reader, next + 1))) return goneAfter(reader, next + 2)
  if (isOtherHalf(reader, first, next)) return null
  if (!/^(?:down|in|done|gone|behind|deep|elapsed|finished|complete|through|past|already|under)$/.test(after)) return null
  const follows = wordAfter(reader, next)
  if (after === 'behind' || after === 'elapsed' || after === 'gone') return next + 1
  if (after === 'done' || after === 'finished' || after === 'complete') return next + 1
  // "A minute in the saddle" is a length, "thirty seconds down the hill" too.
  // "Thirty seconds in and out of the saddle."
  if (says(reader, next, 'in and out')) return null
  return follows === '' || /^(?:and|already|now|so|we|you|of)$/.test(follows) ? next + 1 : null
}

/** Where "… left", "… to go", "… to the top", "… and it's over" ends; null without it. */
function leftAfter(reader: Reader, next: number): number | null {
  if (endsAt(reader, next - 1)) return null
  const after = wordAt(reader, next)
  // "Ten minutes of riding left."
  if (after === 'of' && !endsAt(reader, next + 1) && /^(?:left|remaining|to)$/.test(wordAt(reader, next + 2)))
    return leftAfter(reader, next + 2)
  if (after === 'left' || after === 'remaining' || after === 'remain') return BODY.has(wordAfter(reader, next)) ? null : next + 1
  if (says(reader, next, 'to go|finish|spare')) return next + 2
  if (says(reader, next, 'to the') && ENDS_UP.has(wordAt(reader, next + 2))) return next + 3
  // "You're five seconds away", "ten seconds from the top".
  if (after === 'away' && wordAfter(reader, next) !== 'from') return next + 1
  const from = after === 'away' ? next + 1 : next
  if (says(reader, from, 'from the') && ENDS_UP.has(wordAt(reader, from + 2))) return from + 3
  const coming = comingEnd(reader, next)
  // "Thirty seconds coming up" is how long it will be.
  if (coming !== null && after !== 'coming') return coming
  if (after === 'out' && (endsAt(reader, next) || wordAfter(reader, next) === 'from')) return next + 1
  if (
    says(reader, next, "and it's|its|that's|we're|you're|then|we|you|it") &&
    /^(?:over|done|out|home|off|free|through|finished|rest|sit|is|are|we|you)$/.test(wordAt(reader, next + 2))
  ) {
    return next + 2
  }
  return null
}

const WHOLES: readonly (readonly [nouns: RegExp, whole: Whole])[] = [
  [/^(?:class|ride|workout|session|day|night|hour|show)$/, 'class'],
  [/^(?:song|track|tune)$/, 'song'],
  [/^(?:set|sets|rounds|round)$/, 'set'],
  [/^(?:push|climb|hill|mountain|effort|block|interval|surge|sprint|run|hold|stretch|one|standing|break|rest|recovery|breather)$/, 'block'],
]

/** The whole a noun names, if it names one. */
export const wholeOf = (noun: string): Whole | undefined => WHOLES.find(([nouns]) => nouns.test(noun))?.[1]

/** "… in class", "… of this song", "… up the hill": the whole that is meant, if it is said. */
export function wholeAfter(reader: Reader, next: number): { of?: Whole } {
  const end = endOfWhole(reader, next)
  if (end === next) return {}
  const noun = nounAt(reader, end - 1)
  return { of: WHOLES.find(([nouns]) => nouns.test(noun))![1] }
}

/** The token after "in class", "of this push". */
export function endOfWhole(reader: Reader, next: number): number {
  if (endsAt(reader, next - 1) || !/^(?:in|of|through|into|up|on|for|with)$/.test(wordAt(reader, next)) || endsAt(reader, next)) return next
  const noun =
    /^(?:the|this|our|today's|tonight's|your|that)$/.test(wordAt(reader, next + 1)) && !endsAt(reader, next + 1) ? next + 2 : next + 1
  return WHOLES.some(([nouns]) => nouns.test(nounAt(reader, noun))) ? noun + 1 : next
}

/** A noun, of which more may be said at once: "that hill's behind you". */
const nounAt = (reader: Reader, at: number): string => wordAt(reader, at).replace(/'s$/, '')

/** What the words after a length say it is a length of: "of work", "easy", "to breathe", "push". */
function subjectOf(reader: Reader, first: number, next: number): Subject {
  const led = wordBefore(reader, first) === 'for' ? wordBefore(reader, first - 1) : ''
  // "Stand for two minutes."
  const isStance = /^(?:stand|standing|sit|sitting|seated)$/.test(led)
  const posture = isStance || postureAfter(reader, next)
  const on = kindAndQuality(reader, first, next)
  // "Jumps for two minutes": the kind stands before it.
  const before = isStance ? {} : kindOf(led)
  return { ...on, ...before, ...(posture && { posture: true as const }) }
}

/** "thirty seconds standing", "a minute in the saddle", "half a minute, on your feet". */
function postureAfter(reader: Reader, next: number): boolean {
  for (let at = next; at < next + 4; at++) {
    if (/^(?:standing|seated|saddle|sitting|feet|up|tall)$/.test(wordAt(reader, at))) return true
    if (reader.tokens[at]?.stops) return false
  }
  return false
}

function kindAndQuality(reader: Reader, first: number, next: number): Subject {
  if (isOtherHalf(reader, first, next)) return { quality: 'easy', ahead: true }
  const mark = reader.marks[first]!
  const ahead = { ...(mark.ahead && { ahead: true as const }), ...(mark.kind !== undefined && { kind: mark.kind }) }
  for (let at = next; at < next + 4 && !endsAt(reader, at - 1); at++) {
    const word = wordAt(reader, at)
    if (word === 'between') return { quality: 'easy', ahead: true }
    if (EASY.has(word)) return { quality: 'easy', ...(mark.ahead && { ahead: true as const }) }
    if (HARD.has(word) && !leadsNoun(reader, at) && (at === next || word === 'work' || word === 'hard'))
      return { quality: 'hard', ...ahead, ...kindOf(word) }
    if (/^(?:of|for|to|at|in|the|this|that|your|a|these|those|all|and|seated|standing|each|more)$/.test(word)) continue
    return { ...ahead, ...kindOf(word) }
  }
  return ahead
}

/** "two minutes on this climb": where, and not how hard. */
const leadsNoun = (reader: Reader, at: number): boolean =>
  /^(?:on|out)$/.test(wordAt(reader, at)) && /^(?:the|this|that|our|your|a|of|here|there)$/.test(wordAfter(reader, at))

/** The kind of block a noun may name: "pushes" and "pushing" are a push. */
function kindOf(word: string): { kind?: string } {
  if (word === '' || NO_KIND.has(word) || !/^\p{L}{3,}$/u.test(word)) return {}
  return { kind: singular(word.length > 5 ? word.replace(/ing$/, '') : word) }
}
