import type { Meaning } from '#engine/cues/claims/claim.ts'
import { type NumberPhrase, numberAt } from './numberAt.ts'
import { claim, closes, endsAt, type Reader, type Rule, read, says, slot, startsAt, wordAfter, wordAt, wordBefore } from './reader.ts'
import { PLURALS } from './words.ts'

/** "on fours", "eight up, eight down", "four left, four right", "on a four count", "four of each", "every four counts": how a move is counted. */
export const readMove: Rule = (reader, at) =>
  pair(reader, at) ?? every(reader, at) ?? each(reader, at) ?? plural(reader, at) ?? counted(reader, at)

/** Opposite ways of one move. */
const WAYS: readonly (readonly [string, string])[] = [
  ['up', 'down'],
  ['down', 'up'],
  ['left', 'right'],
  ['right', 'left'],
  ['back', 'forward'],
  ['out', 'in'],
]

interface Half {
  number: NumberPhrase
  at: number
  way: string
  next: number
  /** "four times up". */
  times: boolean
}

/** Both halves of a move: "eight up, eight down", "up for eight and down for eight", "left four, right four". */
function pair(reader: Reader, at: number) {
  const first = half(reader, at)
  if (first === null) return null
  const start = /^(?:and|then)$/.test(wordAt(reader, first.next)) ? first.next + 1 : first.next
  const second = half(reader, start)
  if (second === null || !WAYS.some(([one, other]) => one === first.way && other === second.way)) return null
  if (first.number.value !== second.number.value || first.number.fraction || first.times !== second.times) return null
  const { value } = first.number
  const form = ({ number: { figures } }: Half) => ({ as: 'number' as const, figures, per: 1 })
  return read(
    second.next,
    claim(
      reader,
      at,
      second.next - 1,
      // "Four times up, four times down" tells how often, "four up, four down" for how long.
      [first.times ? { about: 'each', value } : { about: 'moveCounts', value }],
      [slot(reader, first.at, first.number.next - 1, form(first)), slot(reader, second.at, second.number.next - 1, form(second))],
    ),
  )
}

/** "eight up", "up for eight", "eight counts up", "up eight". */
function half(reader: Reader, at: number): Half | null {
  const isWay = (word: string) => WAYS.some(([one]) => one === word)
  const word = wordAt(reader, at)
  if (isWay(word)) {
    if (endsAt(reader, at)) return null
    const led = wordAt(reader, at + 1) === 'for' || wordAt(reader, at + 1) === 'on' ? at + 2 : at + 1
    // "Up for a count of eight."
    const start = says(reader, led, 'a count of') ? led + 3 : led
    const number = numberAt(reader.tokens, start)
    if (number === null) return null
    const noun = wordAfter(reader, number.next - 1)
    const times = TIMES.test(noun)
    return { number, at: start, way: word, next: number.next + (times || COUNTS.test(noun) ? 1 : 0), times }
  }
  const number = numberAt(reader.tokens, at)
  if (number === null || endsAt(reader, number.next - 1)) return null
  const times = TIMES.test(wordAt(reader, number.next))
  const noun = number.next + (times || COUNTS.test(wordAt(reader, number.next)) ? 1 : 0)
  if (endsAt(reader, noun - 1)) return null
  // "Four times back down."
  const way = noun + (/^(?:back|right|straight)$/.test(wordAt(reader, noun)) && isWay(wordAfter(reader, noun)) ? 1 : 0)
  return isWay(wordAt(reader, way)) ? { number, at, way: wordAt(reader, way), next: way + 1, times } : null
}

const TIMES = /^(?:times|x)$/
const COUNTS = /^(?:counts|beats)$/
/** What riders do in a move, so that "every eight counts" is about it. */
const MOVING =
  /^(?:pop|popping|jump|jumping|come|coming|go|going|switch|switching|change|changing|lift|lifting|lean|leaning|press|pressing|up|rise|rising|stand|hop|hopping|tap|tapping|move|moving|alternate|sway|swaying|crunch|pulse|dip|dipping|down|hover|over|out|tuck)$/

/** "up and down every eight counts", "every four counts we switch": a change of the move, or all of it. */
function every(reader: Reader, at: number) {
  if (wordAt(reader, at) !== 'every' || endsAt(reader, at)) return null
  const number = numberAt(reader.tokens, at + 1)
  if (number === null || number.fraction || number.value < 2) return null
  const counts = /^(?:counts|beats|count|beat)$/.test(wordAfter(reader, number.next - 1))
  if (!counts && !closes(reader, number.next - 1)) return null
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
      [slot(reader, at + 1, number.next - 1, { as: 'number', figures: number.figures, per: 1 })],
    ),
  )
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
