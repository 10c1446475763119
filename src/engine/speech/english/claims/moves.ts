import type { Meaning, Unit } from '#engine/cues/claims/claim.ts'
import type { Seconds } from '#units/units.ts'
import { type NumberPhrase, numberAt } from './numberAt.ts'
import { claim, closes, endsAt, type Reader, type Rule, read, says, slot, startsAt, wordAfter, wordAt, wordBefore } from './reader.ts'
import { ORDINALS, PLURALS } from './words.ts'

/** "on fours", "eight up, eight down", "four left, four right", "on a four count", "four of each", "every four counts": how a move is counted. */
export const readMove: Rule = (reader, at) =>
  pair(reader, at) ??
  countTo(reader, at) ??
  eachOne(reader, at) ??
  every(reader, at) ??
  each(reader, at) ??
  plural(reader, at) ??
  counted(reader, at)

/** Words of the two ways of a move, side by side: "stand for four, sit for four". */
const WAYS: readonly (readonly [RegExp, RegExp])[] = [
  [/^(?:up|stand|standing|rise|lift|air|tall)$/, /^(?:down|sit|sitting|seated|lower|back|seat|saddle)$/],
  [/^left$/, /^right$/],
  [/^(?:back)$/, /^(?:forward|front)$/],
  [/^out$/, /^(?:in|seat|saddle)$/],
]
const isWay = (word: string): boolean => WAYS.some((pair) => pair.some((way) => way.test(word)))
const opposite = (one: string, other: string): boolean =>
  WAYS.some(([first, second]) => (first.test(one) && second.test(other)) || (second.test(one) && first.test(other)))

type MoveUnit = 'times' | Unit

interface Half {
  number: NumberPhrase
  at: number
  way: string
  next: number
  /** "four times up", "two bars up"; null where the number stands by itself. */
  unit: MoveUnit | null
}

/** What may stand between the halves: "… and then we drop down for four". */
const BETWEEN =
  /^(?:and|then|stay|hold|keep|we|we're|we'll|you|you're|you'll|go|come|pop|drop|lower|settle|right|straight|a|count|of|for|it's|that's)$/
const MOST_BETWEEN = 4

/** Both halves of a move: "eight up, eight down", "up for eight and sit back for eight", "left four, right four". */
function pair(reader: Reader, at: number) {
  const first = half(reader, at)
  if (first === null || isBreath(reader, at)) return null
  let second: Half | null = null
  for (let start = first.next; start <= first.next + MOST_BETWEEN && start < reader.tokens.length; start++) {
    if (reader.tokens[start - 1]!.stops) break
    second = half(reader, start)
    if (second !== null || !BETWEEN.test(wordAt(reader, start))) break
  }
  if (second === null || !opposite(first.way, second.way)) return null
  // In and out is how people breathe, but for "in, out of the saddle".
  if (first.way === 'in' && !says(reader, second.next, 'of the saddle')) return null
  const { value } = first.number
  const unit = first.unit ?? second.unit ?? 'counts'
  // "Pop up for two bars, then sit for two."
  if (value !== second.number.value || first.number.fraction || (second.unit ?? unit) !== unit) return null
  // As many seconds are no part of a move but efforts.
  if (unit === 'seconds' && value > LONGEST) return null
  const form = ({ number: { figures } }: Half) => ({ as: 'number' as const, figures, per: 1 })
  return read(
    second.next,
    claim(
      reader,
      at,
      second.next - 1,
      // "Four times up, four times down" tells how often, "four up, four down" for how long.
      [unit === 'times' ? { about: 'each', value } : { about: 'moveCounts', value, ...(unit !== 'counts' && { unit }) }],
      [slot(reader, first.at, first.number.next - 1, form(first)), slot(reader, second.at, second.number.next - 1, form(second))],
    ),
  )
}

/** "in for four, out for four": of the breath. */
const isBreath = ({ tokens }: Reader, at: number): boolean =>
  tokens.slice(Math.max(0, at - 6), at + 10).some(({ word }) => /^(?:breath|breathe|breathing|inhale|exhale|nose|mouth|lungs)$/.test(word))

/** "eight up", "up for eight", "eight counts up", "up eight", "sit back for eight", "eight in the air". */
function half(reader: Reader, at: number): Half | null {
  const word = wordAt(reader, at)
  if (isWay(word)) {
    if (endsAt(reader, at)) return null
    // "Sit back for four", "stand up for four".
    const way = /^(?:up|back|down|tall)$/.test(wordAt(reader, at + 1)) && !endsAt(reader, at + 1) ? at + 1 : at
    const led = wordAt(reader, way + 1) === 'for' || wordAt(reader, way + 1) === 'on' ? way + 2 : way + 1
    // "Up for a count of eight."
    const start = says(reader, led, 'a count of') ? led + 3 : led
    const number = numberAt(reader.tokens, start)
    // "Lift four" is of something else.
    if (number === null || (led === way + 1 && /^(?:lift|lower|rise)$/.test(word))) return null
    const unit = unitOf(wordAfter(reader, number.next - 1))
    return { number, at: start, way: word, next: number.next + (unit ? 1 : 0), unit }
  }
  const number = numberAt(reader.tokens, at)
  if (number === null || endsAt(reader, number.next - 1)) return null
  const unit = unitOf(wordAt(reader, number.next))
  const noun = number.next + (unit ? 1 : 0)
  if (endsAt(reader, noun - 1)) return null
  // "Four in the air, four in the saddle."
  const placed = says(reader, noun, 'in the air|seat|saddle') ? noun + 2 : noun
  // "Four times back down."
  const way = placed + (/^(?:back|right|straight)$/.test(wordAt(reader, placed)) && isWay(wordAfter(reader, placed)) ? 1 : 0)
  return isWay(wordAt(reader, way)) ? { number, at, way: wordAt(reader, way), next: way + 1, unit } : null
}

/** Longest part of a move that is told in seconds. */
const LONGEST: Seconds = 10
const COUNTS = /^(?:counts|beats)$/
const UNITS: readonly (readonly [RegExp, MoveUnit])[] = [
  [/^(?:times|x)$/, 'times'],
  [COUNTS, 'counts'],
  [/^(?:bars?|measures?)$/, 'bars'],
  [/^(?:seconds|secs)$/, 'seconds'],
]
const unitOf = (word: string): MoveUnit | null => UNITS.find(([words]) => words.test(word))?.[1] ?? null

/** What riders do in a move, so that "every eight counts" is about it. */
const MOVING =
  /^(?:pop|popping|jump|jumping|come|coming|go|going|switch|switching|swap|swapping|change|changing|lift|lifting|lean|leaning|press|pressing|up|rise|rising|stand|hop|hopping|tap|tapping|move|moving|alternate|sway|swaying|crunch|pulse|dip|dipping|down|hover|over|out|tuck)$/

export const isMoving = (word: string): boolean => MOVING.test(word)

/** "count to four and switch", "switch on a count of four". */
function countTo(reader: Reader, at: number) {
  if (!says(reader, at, 'count to|of') || endsAt(reader, at + 1)) return null
  const number = numberAt(reader.tokens, at + 2)
  if (number === null || number.fraction || number.value < 2 || number.value > 32) return null
  const then = /^(?:and|then)$/.test(wordAt(reader, number.next)) ? number.next + 1 : number.next
  const follows = isMoving(wordAt(reader, then)) && wordAt(reader, at + 1) === 'to'
  const before = wordAt(reader, at + 1) === 'of' && [at - 4, at - 3, at - 2].some((place) => place >= 0 && isMoving(wordAt(reader, place)))
  if (!follows && !before) return null
  const form = { as: 'number' as const, figures: number.figures, per: 1 }
  return read(
    number.next,
    claim(reader, at, number.next - 1, [{ about: 'moveCounts', value: number.value }], [slot(reader, at + 2, number.next - 1, form)]),
  )
}

const FIGURES = /^(?:one|jump|lean|lift|press|hop|rise|sway|tap|pulse|crunch|dip|side|way|move|hover)$/

/** "every jump gets eight counts", "hold each one for eight". */
function eachOne(reader: Reader, at: number) {
  if (!/^(?:each|every)$/.test(wordAt(reader, at)) || !FIGURES.test(wordAfter(reader, at)) || endsAt(reader, at + 1)) return null
  if (!/^(?:for|gets|is|lasts|takes|has|in|on)$/.test(wordAt(reader, at + 2)) || endsAt(reader, at + 2)) return null
  const number = numberAt(reader.tokens, at + 3)
  if (number === null || number.fraction || number.value < 2 || number.value > 32) return null
  const counts = COUNTS.test(wordAfter(reader, number.next - 1))
  if (!counts && (!closes(reader, number.next - 1) || wordAt(reader, at + 2) !== 'for')) return null
  const next = number.next + (counts ? 1 : 0)
  const form = { as: 'number' as const, figures: number.figures, per: 1 }
  return read(
    next,
    claim(
      reader,
      at,
      next - 1,
      [
        { about: 'moveCounts', value: number.value },
        { about: 'moveCounts', value: number.value / 2 },
      ],
      [slot(reader, at + 3, number.next - 1, form)],
    ),
  )
}

/** "up and down every eight counts", "every four counts we switch": a change of the move, or all of it. */
function every(reader: Reader, at: number) {
  if (wordAt(reader, at) !== 'every' || endsAt(reader, at)) return null
  const nth = nthAt(reader, at + 1)
  const number = nth ?? numberAt(reader.tokens, at + 1)
  if (number === null || number.fraction || number.value < 2) return null
  const counts = /^(?:counts|beats|count|beat)$/.test(wordAfter(reader, number.next - 1))
  if (!counts && (nth !== null || !closes(reader, number.next - 1))) return null
  const next = number.next + (counts ? 1 : 0)
  const told = [at - 4, at - 3, at - 2, at - 1, next, next + 1, next + 2]
    .filter(
      (place) =>
        place >= 0 &&
        (place >= next
          ? !reader.tokens.slice(next - 1, place).some(({ ends }) => ends)
          : !reader.tokens.slice(place, at).some(({ ends }) => ends)),
    )
    .some((place) => MOVING.test(wordAt(reader, place)))
  if (!told) return null
  const { value } = number
  return read(
    next,
    claim(
      reader,
      at,
      next - 1,
      [
        { about: 'moveCounts', value },
        { about: 'moveCounts', value: value / 2 },
      ],
      [
        slot(
          reader,
          at + 1,
          number.next - 1,
          nth ? { as: 'ordinal', figures: nth.figures } : { as: 'number', figures: number.figures, per: 1 },
        ),
      ],
    ),
  )
}

/** "fourth", "8th". */
function nthAt(reader: Reader, at: number): NumberPhrase | null {
  const value = ORDINALS.indexOf(wordAt(reader, at))
  if (value > 1) return { value, next: at + 1, figures: false, fraction: false }
  const digits = /^\d{1,2}$/.test(wordAt(reader, at)) && /^(?:nd|rd|th)$/.test(wordAfter(reader, at))
  return digits ? { value: Number(wordAt(reader, at)), next: at + 2, figures: true, fraction: false } : null
}

/** "four of each", "four each side". */
function each(reader: Reader, at: number) {
  const number = numberAt(reader.tokens, at)
  if (number === null || number.fraction || endsAt(reader, number.next - 1)) return null
  if (!says(reader, number.next, 'of each') && !says(reader, number.next, 'each|per side|way|leg|foot')) return null
  const next = number.next + 2
  const form = { as: 'number' as const, figures: number.figures, per: 1 }
  return read(next, claim(reader, at, next - 1, [{ about: 'each', value: number.value }], [slot(reader, at, number.next - 1, form)]))
}

/** "on fours", "eights", "4s": only as a plural by itself, "four" may be a count-in. */
function plural(reader: Reader, at: number) {
  const word = wordAt(reader, at)
  const value = PLURALS.get(word)
  if (value !== undefined && !isCounted(reader, at)) {
    return read(at + 1, claim(reader, at, at, [{ about: 'moveCounts', value }], [slot(reader, at, at, { as: 'plural', figures: false })]))
  }
  // "On 8s": the digit and its s are two tokens that touch.
  const digits = /^(?:2|3|4|6|8|16)$/.test(word) && wordAfter(reader, at) === 's' && reader.tokens[at + 1]!.from === reader.tokens[at]!.to
  if (!digits || !/^(?:on|in|to|of)$/.test(wordBefore(reader, at))) return null
  return read(
    at + 2,
    claim(reader, at, at + 1, [{ about: 'moveCounts', value: Number(word) }], [slot(reader, at, at + 1, { as: 'plural', figures: true })]),
  )
}

/** Whether a number ends right before a token: "four eights" are a length. */
function isCounted(reader: Reader, at: number): boolean {
  if (startsAt(reader, at)) return false
  return [at - 1, at - 2, at - 3].some((start) => start >= 0 && numberAt(reader.tokens, start)?.next === at)
}

/** "on a four count", "four-count jumps", "jumps on eight". */
function counted(reader: Reader, at: number) {
  const number = numberAt(reader.tokens, at)
  if (number === null || number.fraction || number.value < 2 || number.value > 32) return null
  const meaning: Meaning = { about: 'moveCounts', value: number.value }
  const slots = [slot(reader, at, number.next - 1, { as: 'number', figures: number.figures, per: 1 })]
  const hyphen = reader.tokens[number.next - 1]!.joined
  if ((hyphen || !endsAt(reader, number.next - 1)) && wordAt(reader, number.next) === 'count') {
    return read(number.next + 1, claim(reader, at, number.next, [meaning], slots))
  }
  const named = /^(?:jumps|lifts|rises|leans|presses|crunches|pulses|sways|corners)$/.test(wordBefore(reader, at - 1))
  if (wordBefore(reader, at) !== 'on' || !named || !closes(reader, number.next - 1)) return null
  return read(number.next, claim(reader, at, number.next - 1, [meaning], slots))
}
