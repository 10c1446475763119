import type { Cue } from '#plan/model.ts'
import { amountAt, withUnitInside } from './amountAt.ts'
import type { Claim } from './claim.ts'
import { beforeOption, claim, endsAt, isUnit, type Of, type Reader, wordAt } from './claimReader.ts'
import { type NumberPhrase, numberAt } from './numberPhrase.ts'
import { singular } from './singular.ts'
import { type Token, tokensOf, tokensOfCue } from './tokens.ts'

const ON = new Set(['on', 'up', 'more'])
const OFF = new Set(['off', 'down', 'less'])
const SECONDS = new Set(['s', 'sec', 'secs', 'second', 'seconds'])
const MINUTES = new Set(['min', 'mins', 'minute', 'minutes'])
const BOUNDS: Record<string, 'under' | 'over' | 'near'> = { under: 'under', over: 'over', nearly: 'near', almost: 'near', about: 'near' }
const COUNTED: Record<string, number> = {
  twos: 2,
  threes: 3,
  fours: 4,
  sixes: 6,
  eights: 8,
  sixteens: 16,
  '2s': 2,
  '4s': 4,
  '8s': 8,
  '16s': 16,
}
const EVERY = new Set(['every', 'each', 'per'])
/** Words that follow a number without being a kind of effort. */
const NO_KIND = new Set(
  'of and in to on off up down left right more next easy hard counts count beats beat eights songs song phrases for at the a one this that last first only number'.split(
    ' ',
  ),
)

interface Cached {
  unit: string
  claims: readonly Claim[]
}
const known = new WeakMap<Cue, Cached>()

/** The numbers a cue speaks; parsed once for each cue object. */
export function claimsOf(cue: Cue, unit: string): readonly Claim[] {
  const held = known.get(cue)
  if (held?.unit === unit) return held.claims
  const claims = claimsIn(tokensOfCue(cue), unit)
  known.set(cue, { unit, claims })
  return claims
}

/**
 * The numbers a text speaks. Nothing is claimed where the words leave it open: a bare "four"
 * may be a count-in. What comes after "option" is about another version and is not read.
 *
 * @param unit the bike's own unit, understood beside the common ones
 */
export const readClaims = (text: string, unit: string): Claim[] => claimsIn(tokensOf(text), unit)

function claimsIn(spoken: readonly Token[], unit: string): Claim[] {
  const tokens = beforeOption(spoken)
  const reader: Reader = { tokens, unit: unit.toLowerCase(), claims: [] }
  let at = 0
  while (at < tokens.length) at = readAt(reader, at)
  return reader.claims
}

/** Reads what starts at a token and says where to go on. */
function readAt(reader: Reader, at: number): number {
  const number = amountAt(reader, at)
  const next =
    readMinutesAndPart(reader, at) ??
    readStay(reader, at) ??
    readLast(reader, at) ??
    readVerb(reader, at) ??
    readMoveCounts(reader, at) ??
    readUpAndDown(reader, at) ??
    readArticleMinute(reader, at) ??
    readKindThenNumber(reader, at)
  if (next !== null && next !== undefined) return next
  if (number === null) return at + 1
  return (
    readSeconds(reader, at, number) ??
    readTotal(reader, at, number) ??
    readChange(reader, at, number) ??
    readAmount(reader, at, number) ??
    number.next
  )
}

/** "a minute and a half", "two minutes and a half". */
function readMinutesAndPart(reader: Reader, at: number): number | null {
  const number = EVERY.has(wordAt(reader, at - 1)) ? null : withUnitInside(reader, at, (word) => MINUTES.has(word))
  if (number === null) return null
  const bound = BOUNDS[wordAt(reader, at - 1)]
  return claim<Of<'seconds'>>(reader, at, number.next - 1, {
    about: 'seconds',
    value: 60 * number.value,
    figures: number.figures,
    ...(bound && { bound }),
  })
}

/** "same gear", "same resistance", "keep it on". */
function readStay(reader: Reader, at: number): number | null {
  const [first, second, third] = [wordAt(reader, at), wordAt(reader, at + 1), wordAt(reader, at + 2)]
  if (first === 'same' && (second === 'gear' || second === 'resistance' || isUnit(reader, second))) {
    return claim<Of<'stay'>>(reader, at, at + 1, { about: 'stay', figures: false })
  }
  if (first === 'keep' && second === 'it' && third === 'on') return claim<Of<'stay'>>(reader, at, at + 2, { about: 'stay', figures: false })
  return null
}

/** "last one", "last push", "final round"; not "last thirty" nor "last eight". */
function readLast(reader: Reader, at: number): number | null {
  const word = wordAt(reader, at)
  if ((word !== 'last' && word !== 'final') || endsAt(reader, at)) return null
  const kind = wordAt(reader, at + 1)
  const length = numberAt(reader.tokens, at + 1)
  // "Last thirty" is about time; a smaller number may be counts.
  if (length !== null && length.value >= 10 && length.value % 5 === 0 && endsAt(reader, length.next - 1)) {
    return claim<Of<'seconds'>>(reader, at + 1, length.next - 1, {
      about: 'seconds',
      value: length.value,
      figures: length.figures,
      bare: true,
    })
  }
  if (kind === 'one') return claim<Of<'left'>>(reader, at, at + 1, { about: 'left', value: 0, figures: false })
  if (length !== null || COUNTED[kind] !== undefined || NO_KIND.has(kind)) return null
  return claim<Of<'left'>>(reader, at, at + 1, { about: 'left', value: 0, kind: singular(kind), figures: false })
}

/** "add one and a half", "take half a turn off", "take one off". */
function readVerb(reader: Reader, at: number): number | null {
  const verb = wordAt(reader, at)
  if (verb !== 'add' && verb !== 'take') return null
  const number = amountAt(reader, at + 1)
  if (number === null) return null
  let last = number.next - 1
  if (wordAt(reader, last + 1) === 'a' && isUnit(reader, wordAt(reader, last + 2))) last += 2
  else if (isUnit(reader, wordAt(reader, last + 1))) last += 1
  const tail = wordAt(reader, last + 1)
  if (verb === 'take' && tail !== 'off') return null
  const closes = tail === 'off' || tail === 'on'
  const sign = verb === 'take' ? -1 : 1
  return claim<Of<'change'>>(reader, at, closes ? last + 1 : last, {
    about: 'change',
    value: sign * number.value,
    verb: true,
    figures: number.figures,
  })
}

/** "on fours", "eights": only as a plural, "four" may be a count-in. */
function readMoveCounts(reader: Reader, at: number): number | null {
  const value = COUNTED[wordAt(reader, at)]
  if (value === undefined || numberAt(reader.tokens, at - 1) !== null) return null
  return claim<Of<'moveCounts'>>(reader, at, at, { about: 'moveCounts', value, figures: /^\d/.test(wordAt(reader, at)) })
}

/** "eight up, eight down" and "up sixteen, down sixteen". */
function readUpAndDown(reader: Reader, at: number): number | null {
  const pair = (up: number, down: number, last: number): number | null => {
    const [first, second] = [numberAt(reader.tokens, up), numberAt(reader.tokens, down)]
    if (first === null || second === null || first.value !== second.value || first.fraction) return null
    return claim<Of<'moveCounts'>>(reader, at, last, { about: 'moveCounts', value: first.value, figures: first.figures, pair: true })
  }
  const word = (offset: number) => wordAt(reader, at + offset)
  if (word(0) === 'up' && word(2) === 'down') return pair(at + 1, at + 3, at + 3)
  if (word(1) === 'up' && word(3) === 'down') return pair(at, at + 2, at + 3)
  return null
}

/** "a minute", "under a minute". */
function readArticleMinute(reader: Reader, at: number): number | null {
  if (wordAt(reader, at) !== 'a' || !MINUTES.has(wordAt(reader, at + 1)) || wordAt(reader, at - 1) === 'half') return null
  return readSeconds(reader, at, { value: 1, next: at + 1, figures: false, fraction: false })
}

/** "surge two", "hill one". */
function readKindThenNumber(reader: Reader, at: number): number | null {
  const kind = wordAt(reader, at)
  if (
    endsAt(reader, at) ||
    NO_KIND.has(kind) ||
    (isUnit(reader, kind) && kind !== 'step') ||
    !/^\p{L}{3,}$/u.test(kind) ||
    numberAt(reader.tokens, at) !== null
  )
    return null
  const number = numberAt(reader.tokens, at + 1)
  if (
    number === null ||
    number.fraction ||
    number.value < 1 ||
    !(endsAt(reader, number.next - 1) || wordAt(reader, number.next) === 'again')
  )
    return null
  return claim<Of<'place'>>(reader, at, number.next - 1, {
    about: 'place',
    value: number.value,
    kind: singular(kind),
    figures: number.figures,
  })
}

/** "twenty seconds", "a minute", "half a minute", "under a minute". */
function readSeconds(reader: Reader, at: number, number: NumberPhrase): number | null {
  const before = wordAt(reader, at - 1)
  if (EVERY.has(before)) return null
  // "thirty to the top", "twenty to go": a round number that leads somewhere is time.
  const leads = wordAt(reader, number.next) === 'to' && /^(?:the|go)$/.test(wordAt(reader, number.next + 1))
  if (leads && !number.fraction && number.value >= 10 && number.value % 5 === 0) {
    return claim<Of<'seconds'>>(reader, at, number.next - 1, { about: 'seconds', value: number.value, figures: number.figures, bare: true })
  }
  const gap = wordAt(reader, number.next) === 'a' ? 1 : 0
  const unit = wordAt(reader, number.next + gap)
  const length = SECONDS.has(unit) ? 1 : MINUTES.has(unit) ? 60 : 0
  if (length === 0) return null
  // "Ten seconds left" is about what is going on when it is said, and "twenty to thirty seconds" leaves it open.
  if (wordAt(reader, number.next + gap + 1) === 'left' || (before === 'to' && endsInNumber(reader, at - 2))) return null
  const bound = BOUNDS[before]
  return claim<Of<'seconds'>>(reader, at, number.next + gap, {
    about: 'seconds',
    value: number.value * length,
    figures: number.figures,
    ...(bound && { bound }),
  })
}

const endsInNumber = (reader: Reader, at: number): boolean => at >= 0 && numberAt(reader.tokens, at) !== null

/** "up to two and a half", "back to five to six turns", "to at least three turns"; a bare "to five" only with the unit after it. */
function readTotal(reader: Reader, at: number, number: NumberPhrase): number | null {
  const least = wordAt(reader, at - 2) === 'at' && wordAt(reader, at - 1) === 'least'
  const first = least ? at - 2 : at
  const joint = wordAt(reader, first - 1)
  if (joint !== 'to' && joint !== 'at') return null
  const upper = !least && wordAt(reader, number.next) === 'to' ? numberAt(reader.tokens, number.next + 1) : null
  const end = upper?.next ?? number.next
  const named = isUnit(reader, wordAt(reader, end))
  const led = /^(?:back|up|down|be|it)$/.test(wordAt(reader, first - 2))
  if (!named && !(led && (number.fraction || upper?.fraction))) return null
  const last = named ? end : end - 1
  const more = !upper && !endsAt(reader, last) && wordAt(reader, last + 1) === 'or' && wordAt(reader, last + 2) === 'more'
  return claim<Of<'total'>>(reader, first, more ? last + 2 : last, {
    about: 'total',
    low: number.value,
    high: least || more ? null : (upper?.value ?? number.value),
    figures: number.figures,
  })
}

/** "half turn on", "one and a half off", "half a turn off". */
function readChange(reader: Reader, at: number, number: NumberPhrase): number | null {
  let end = number.next
  if (wordAt(reader, end) === 'a' && isUnit(reader, wordAt(reader, end + 1))) end += 2
  else if (wordAt(reader, end) === 'of' && wordAt(reader, end + 1) === 'a' && isUnit(reader, wordAt(reader, end + 2))) end += 3
  else if (isUnit(reader, wordAt(reader, end))) end += 1
  const named = end > number.next
  const direction = endsAt(reader, end - 1) ? '' : wordAt(reader, end)
  const sign = ON.has(direction) ? 1 : OFF.has(direction) ? -1 : 0
  // Without the unit only "on" and "off" are about the knob, and only for amounts a knob turns by in one call.
  const bare = (direction === 'on' || direction === 'off') && number.value <= 5
  if (sign === 0 || !(named || bare)) return null
  return claim<Of<'change'>>(reader, at, end, { about: 'change', value: sign * number.value, verb: false, figures: number.figures })
}

/** "three rounds", "three small hills", "one left", "two pushes to go". */
function readAmount(reader: Reader, at: number, number: NumberPhrase): number | null {
  if (number.fraction || endsAt(reader, number.next - 1)) return null
  const value = number.value
  const first = wordAt(reader, number.next)
  const { figures } = number
  if (first === 'of' && wordAt(reader, number.next + 1) === 'each') {
    return claim<Of<'each'>>(reader, at, number.next + 1, { about: 'each', value, figures })
  }
  if (first === 'rounds' || first === 'times') return claim<Of<'rounds'>>(reader, at, number.next, { about: 'rounds', value, figures })
  if (first === 'left' || (first === 'to' && wordAt(reader, number.next + 1) === 'go')) {
    return claim<Of<'left'>>(reader, at, number.next + (first === 'left' ? 0 : 1), { about: 'left', value, figures })
  }
  const [kind, last] = kindAfter(reader, number.next)
  if (kind === null) return null
  const follows = endsAt(reader, last) ? '' : wordAt(reader, last + 1)
  if (follows === 'left' || (follows === 'to' && wordAt(reader, last + 2) === 'go')) {
    return claim<Of<'left'>>(reader, at, last + (follows === 'left' ? 1 : 2), { about: 'left', value, kind, figures })
  }
  if (value === 1) return null
  return claim<Of<'ahead'>>(reader, at, last, { about: 'ahead', value, kind, figures })
}

/** The noun of "three pushes" or "three small hills". */
function kindAfter(reader: Reader, at: number): [kind: string | null, last: number] {
  for (const index of [at, at + 1]) {
    const word = wordAt(reader, index)
    if (word === '' || NO_KIND.has(word) || SECONDS.has(word) || MINUTES.has(word)) return [null, at]
    if (/s$/.test(word) || wordAt(reader, index + 1) === 'left') return [singular(word), index]
    if (endsAt(reader, index)) return [null, at]
  }
  return [null, at]
}
