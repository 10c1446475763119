import { numberAt } from './numberAt.ts'
import {
  claim,
  closes,
  endsAt,
  isKnob,
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

/** "a seven out of ten", "six to seven of ten", "7/10", "effort eight": planned effort, 0–10. */
export const readEffort: Rule = (reader, at) =>
  ratio(reader, at) ?? onScale(reader, at) ?? ofTen(reader, at) ?? named(reader, at) ?? felt(reader, at)

/** "7/10", with nothing it is a part of. */
function ratio(reader: Reader, at: number) {
  const match = /^(\d{1,2})\/10$/.exec(wordAt(reader, at))
  if (!match || Number(match[1]) > 10 || !isClosed(reader, at)) return null
  const { from } = reader.tokens[at]!
  const own = { from, to: from + match[1]!.length, figure: 'low', form: { as: 'number', figures: true, per: 1 } } as const
  return made(reader, at, at + 1, Number(match[1]), Number(match[1]), [own])
}

/** "on a scale of one to ten, I want a four": the number is in what follows. */
function onScale(reader: Reader, at: number) {
  if (wordAt(reader, at) !== 'scale' || endsAt(reader, at)) return null
  const from = /^(?:of|from)$/.test(wordAt(reader, at + 1)) ? at + 2 : at + 1
  if (!says(reader, from, 'one|zero|1|0 to|through ten|10')) return null
  for (let place = from + 3; place <= from + 11 && place < reader.tokens.length && !reader.tokens[place - 1]!.stops; place++) {
    const number = numberAt(reader.tokens, place)
    if (number === null) continue
    const told = !number.fraction && number.value <= 10 && isClosed(reader, number.next - 1) && !reader.marks[place]!.silent
    if (!told) return null
    const slots = [slot(reader, place, number.next - 1, { as: 'number', figures: number.figures, per: 1 })]
    return made(reader, place, number.next, number.value, number.value, slots)
  }
  return null
}

function ofTen(reader: Reader, at: number) {
  const low = numberAt(reader.tokens, at)
  if (low === null || low.value > 10) return null
  const { tokens } = reader
  const joined = tokens[low.next - 1]!.joined
  if (endsAt(reader, low.next - 1) && !joined) return null
  const start = joined ? low.next : wordAt(reader, low.next) === 'to' ? low.next + 1 : null
  const high = start === null ? null : numberAt(tokens, start)
  const last = high ?? low
  if (last.value > 10 || last.value < low.value || endsAt(reader, last.next - 1)) return null
  const tail = tailAt(reader, last.next)
  if (tail !== null && isPraise(reader, tail - 1)) return read(tail)
  if (tail === null || !isClosed(reader, tail - 1)) return null
  const slots = high === null ? [slot(reader, at, low.next - 1, { as: 'number', figures: low.figures, per: 1 })] : []
  return made(reader, at, tail, low.value, last.value, slots)
}

/** Where "out of ten", "of ten", "on the scale" ends; "of ten" may be said of anything, so it has to close. */
function tailAt(reader: Reader, at: number): number | null {
  if (says(reader, at, "out of ten|10|ten's")) return at + 3
  if (says(reader, at, 'outta|outa|over ten|10')) return at + 2
  if (says(reader, at, 'of ten|10')) return at + 2
  if (says(reader, at, 'on the|a|our|your scale')) return says(reader, at + 3, 'of|to ten|10') && !endsAt(reader, at + 2) ? at + 5 : at + 3
  return null
}

/** "effort eight", "an effort of six to seven". */
function named(reader: Reader, at: number) {
  const word = wordAt(reader, at)
  // "Level six effort", "an eight effort".
  if (/^(?:level|a|an)$/.test(word) && !endsAt(reader, at)) {
    const told = numberAt(reader.tokens, at + 1)
    const after = told === null || told.fraction || told.value > 10 || told.value < 1 ? '' : wordAfter(reader, told.next - 1)
    const praised =
      word !== 'level' && startsAt(reader, at) && isKnob(reader) && told !== null && told.value > 2 && isPlain(reader, told.next)
    if (told !== null && (after === 'effort' || (after !== '' && praised))) {
      const slots = [slot(reader, at + 1, told.next - 1, { as: 'number', figures: told.figures, per: 1 })]
      return made(reader, at + 1, after === 'effort' ? told.next + 1 : told.next, told.value, told.value, slots)
    }
  }
  if (!/^(?:effort|rpe|exertion)$/.test(word) || endsAt(reader, at)) return null
  let start = at + 1
  while (start < at + 6 && LED.has(wordAt(reader, start)) && !endsAt(reader, start)) start++
  const low = numberAt(reader.tokens, start)
  if (low === null || low.value > 10) return null
  const range = wordAt(reader, low.next) === 'to' && !endsAt(reader, low.next - 1) ? numberAt(reader.tokens, low.next + 1) : null
  const last = range ?? low
  if (last.value > 10 || !isClosed(reader, last.next - 1)) return null
  const slots = range === null ? [slot(reader, start, low.next - 1, { as: 'number', figures: low.figures, per: 1 })] : []
  return made(reader, at, last.next, low.value, last.value, slots)
}

/** What may stand between "effort" and its number: "your effort should settle at about a seven". */
const LED = wordSet('of at is level to about around a an should will can settle settles sit sits stay stays stands here wise give gimme me')

/** "a six is fine here", "a seven the whole way up". */
const isPlain = (reader: Reader, next: number): boolean =>
  says(reader, next, 'is fine|plenty|perfect|enough|good|great') ||
  says(reader, next, 'the whole|entire way') ||
  says(reader, next, 'all the way')

/** What leads up to how hard it should feel: "feels like a", "keep it at a", "call it an", "sitting at a". */
const FEELING = [
  'feel|feels|feeling like',
  'feel|feels|felt closer|close to',
  'call it|this|that',
  'it|this|that as',
  'at|to',
  'should|gonna|to|must|will|can|might be|stay',
  "it's|that's|this's|one's|hill's|push's|climb's|effort's",
  'this|it|that|one|hill|push|climb|effort|surge|sprint is',
  'want|need',
  'give|gimme|show|find|ask|asking|look|looking|aim|aiming|shoot|shooting me|us|for',
]
/** Of these what follows may be no effort but for a full number out of a scale: a "five" is a slap of hands. */
const HANDED = /^(?:me|us|for|want|need)$/
const ADJECTIVES =
  /^(?:solid|strong|hard|easy|good|honest|comfortable|true|real|light|legit|steady|big|heavy|gentle|nice|soft|low|high|firm|full)$/

/** "feels like a five", "keep it at a six", "call it an eight": with its article, which neither turns nor counts have. */
function felt(reader: Reader, at: number) {
  const article = wordAt(reader, at) === 'a' || wordAt(reader, at) === 'an'
  const like = says(reader, at - 2, 'feel|feels|feeling like') && !endsAt(reader, at - 1)
  if (!article && !like) return null
  if (endsAt(reader, at - 1) && article === false) return null
  // "This is only a six."
  const lead = article && /^(?:only|just|about|around|maybe|really)$/.test(wordBefore(reader, at)) ? at - 1 : at
  const led = FEELING.some((words) => {
    const start = lead - words.split(' ').length
    return start >= 0 && says(reader, start, words) && !endsAt(reader, lead - 1)
  })
  if (!led || (article && endsAt(reader, at))) return null
  const adjective = article && ADJECTIVES.test(wordAt(reader, at + 1)) && !endsAt(reader, at + 1) ? 1 : 0
  const start = at + (article ? 1 : 0) + adjective
  const low = numberAt(reader.tokens, start)
  if (
    low === null ||
    low.value < 1 ||
    low.value > 10 ||
    (low.value < 3 && !like) ||
    wordAt(reader, start) === 'half' ||
    wordAt(reader, start) === 'quarter'
  )
    return null
  const aimed = wordBefore(reader, at) === 'for' && /^(?:aim|aiming|shoot|shooting)$/.test(wordBefore(reader, at - 1))
  if (!aimed && HANDED.test(wordBefore(reader, at)) && (low.value < 6 || low.value === 8 || low.value > 9)) return null
  if (!isKnob(reader) && !like) return null
  const range = wordAt(reader, low.next) === 'to' && !endsAt(reader, low.next - 1) ? numberAt(reader.tokens, low.next + 1) : null
  const last = range ?? low
  // With "out of ten" behind it, it is read as that.
  if (last.value > 10 || tailAt(reader, last.next) !== null || !isClosed(reader, last.next - 1)) return null
  const slots = range === null ? [slot(reader, start, low.next - 1, { as: 'number', figures: low.figures, per: 1 })] : []
  return made(reader, start, last.next, low.value, last.value, slots)
}

/** "ten out of ten for showing up". */
const isPraise = (reader: Reader, last: number): boolean => wordAfter(reader, last) === 'for' && /ing$/.test(wordAt(reader, last + 2))

const isClosed = (reader: Reader, last: number): boolean => {
  const after = wordAfter(reader, last)
  if (isPraise(reader, last)) return false
  return closes(reader, last) || /^(?:effort|hard|strong|easy|breathless|plenty|enough)$/.test(after)
}

function made(reader: Reader, first: number, next: number, low: number, high: number, slots: ReturnType<typeof slot>[]) {
  const ahead = reader.marks[first]!.ahead && { on: { ahead: true as const } }
  return read(next, claim(reader, first, next - 1, [{ about: 'effort', low, high, ...ahead }], slots))
}
