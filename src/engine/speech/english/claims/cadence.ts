import { rateAt } from './numberAt.ts'
import { claim, closes, endsAt, isKnob, type Reader, type Rule, read, says, slot, wordAfter, wordAt, wordBefore } from './reader.ts'
import { wordSet } from './words.ts'

/** Least cadence that is told by its number alone. */
const SLOWEST = 40

/** "legs at ninety", "ninety rpm", "faster, to 95", "between 85 and 95": how fast the legs turn. */
export const readCadence: Rule = (reader, at) => unitRate(reader, at) ?? ledRate(reader, at) ?? upToRate(reader, at)

interface Rate {
  low: number
  high: number
  next: number
  slots: ReturnType<typeof slot>[]
}

/** "ninety", "85 to 95", "85 and 95" after "between". */
function rateRange(reader: Reader, at: number, and: boolean): Rate | null {
  const low = rateAt(reader.tokens, at)
  if (low === null || low.fraction) return null
  const joined = reader.tokens[low.next - 1]!.joined && low.figures
  const joint = joined ? low.next : wordAt(reader, low.next) === 'to' || (and && wordAt(reader, low.next) === 'and') ? low.next + 1 : null
  const high = joint !== null && (joined || !endsAt(reader, low.next - 1)) ? rateAt(reader.tokens, joint) : null
  const listed = high === null && endsAt(reader, low.next - 1) ? rateAt(reader.tokens, low.next) : null
  // "Eighty, eighty-five rpm".
  if (listed && listed.value > low.value && listed.value <= low.value + 20 && wordAfter(reader, listed.next - 1) === 'rpm') {
    return { low: low.value, high: listed.value, next: listed.next, slots: [] }
  }
  if (high !== null && high.value > low.value) return { low: low.value, high: high.value, next: high.next, slots: [] }
  return {
    low: low.value,
    high: low.value,
    next: low.next,
    slots: [slot(reader, at, low.next - 1, { as: 'number', figures: low.figures, per: 1 })],
  }
}

const cadence = (reader: Reader, first: number, next: number, rate: Rate, near: boolean) =>
  read(
    next,
    claim(
      reader,
      first,
      next - 1,
      [
        {
          about: 'cadence',
          low: rate.low,
          high: rate.high,
          ...(near && { near: true as const }),
          ...(reader.marks[first]!.ahead && { on: { ahead: true as const } }),
        },
      ],
      rate.slots,
    ),
  )

const NEAR = /^(?:about|around|roughly|nearly|near|almost|over|under)$/

function unitRate(reader: Reader, at: number) {
  const between = wordAt(reader, at) === 'between'
  const start = between ? at + 1 : at
  const rate = rateRange(reader, start, between)
  if (rate === null || endsAt(reader, rate.next - 1)) return null
  const near = NEAR.test(wordBefore(reader, at))
  if (/^(?:rpm|rpms|revs|revolutions)$/.test(wordAt(reader, rate.next))) {
    const long = says(reader, rate.next, 'revolutions|revs per|a minute')
    return cadence(reader, at, rate.next + (long ? 3 : 1), rate, near)
  }
  if (says(reader, rate.next, 'rev min')) return cadence(reader, at, rate.next + 2, rate, near)
  const tempo = wordAt(reader, rate.next) === 'bpm' ? 1 : says(reader, rate.next, 'beats per|a minute') ? 3 : 0
  if (tempo === 0 || rate.low < rate.high) return null
  return read(rate.next + tempo, claim(reader, at, rate.next + tempo - 1, [{ about: 'tempo', value: rate.low }], rate.slots))
}

const LEGS = wordSet('cadence legs pace feet rpm pedals')
const FILLING = wordSet(
  'at to of stay around about up back on is hold down still are go going come coming sit sits be stays steady rolling roll legs turning up from between here there belongs should in near now',
)

/** "legs at ninety", "cadence between 85 and 95". */
function ledRate(reader: Reader, at: number) {
  // "Cadence, eighty-five."
  const paused = endsAt(reader, at) && wordAt(reader, at) === 'cadence' && reader.tokens[at]?.stops === false
  if (!LEGS.has(wordAt(reader, at)) || (endsAt(reader, at) && !paused)) return null
  let place = at + 1
  let between = false
  let near = false
  while (place <= at + 6 && FILLING.has(wordAt(reader, place)) && !endsAt(reader, place)) {
    between ||= wordAt(reader, place) === 'between'
    near ||= NEAR.test(wordAt(reader, place))
    place++
  }
  const rate = rateRange(reader, place, between)
  if (rate === null || rate.low < 30 || rate.high > 160) return null
  if (wordAfter(reader, rate.next - 1) === 'rpm') return cadence(reader, at, rate.next + 1, rate, near)
  return closes(reader, rate.next - 1) ? cadence(reader, at, rate.next, rate, near) : null
}

/** "pick it up to ninety", "faster, to 95": on a knob no place on the scale is as high. */
function upToRate(reader: Reader, at: number) {
  if (wordAt(reader, at) !== 'to' || !isKnob(reader)) return null
  const before = wordBefore(reader, at)
  const told = /^(?:up|down|back|it|stay)$/.test(before) || (before === '' && /^(?:faster|slower|quicker)$/.test(wordAt(reader, at - 1)))
  const rate = rateRange(reader, at + 1, false)
  if (!told || rate === null || rate.low < SLOWEST || rate.high > 160) return null
  return closes(reader, rate.next - 1) ? cadence(reader, at + 1, rate.next, rate, false) : null
}
