import type { Bound, Claim, Meaning, Slot, Subject, Unit } from '#engine/cues/claims/claim.ts'
import type { Token } from '#engine/cues/tokens.ts'
import { ADDING, BETWEEN, EASY, HARD, knownKind, LESS, LEVEL, MORE, MUSIC, PART_OF_TURN, POSTURE, SILENT, TIMES, TURN } from './lexicon.ts'
import { type NumberPhrase, numberAt, ordinalOf } from './numberAt.ts'

/** A text as its claims are read. */
interface Reader {
  tokens: readonly Token[]
  unit: string
  /** Whether nothing is claimed at a token. */
  silent: readonly boolean[]
}

/** What is read at a token, and the token to read on at; null where it is not meant. */
type Rule = (reader: Reader, at: number) => { claims: readonly Claim[]; next: number } | null

const RULES: readonly Rule[] = [readStay, readShare, readEffort, readCadence, readMove, readChange, readTotal, readTime, readMusic, readRow]

/**
 * The numbers a German text speaks. Soberly: a number is only read in one of the forms below, and a
 * sentence that asks, denies, offers, compares, or tells of other days is left alone.
 * Cost: linear in the text, since every rule looks at a few words only.
 *
 * @param unit the bike's own unit, in lower case
 */
export function readClaims(tokens: readonly Token[], unit: string): Claim[] {
  const reader: Reader = { tokens, unit, silent: silentOf(tokens) }
  const claims: Claim[] = []
  let at = 0
  while (at < tokens.length) {
    const counted = reader.silent[at] ? at + 1 : afterCounting(tokens, at)
    if (counted > at) {
      at = counted
      continue
    }
    let reading: ReturnType<Rule> = null
    for (const rule of RULES) {
      reading = rule(reader, at)
      if (reading) break
    }
    if (reading) claims.push(...reading.claims)
    at = Math.max(reading?.next ?? 0, at + 1)
  }
  return claims
}

/** Whole sentences at once: a number in one that is no plain statement is none of the plan's. */
function silentOf(tokens: readonly Token[]): boolean[] {
  const silent: boolean[] = []
  let from = 0
  for (const [i, token] of tokens.entries()) {
    if (!token.stops && i < tokens.length - 1) continue
    const sentence = tokens.slice(from, i + 1)
    const quiet = token.asks || sentence.some(({ word }) => SILENT.test(word))
    // "Fünfzig Prozent geschafft" is of the ride; other shares are of something else.
    const share = sentence.some(({ word }) => word === 'geschafft') && !token.asks
    for (const { word } of sentence) silent.push(quiet && !(share && /^prozent$/.test(word)) && !(share && onlyShare(sentence)))
    from = i + 1
  }
  return silent
}

const onlyShare = (sentence: readonly Token[]): boolean => sentence.every(({ word }) => word === 'prozent' || !SILENT.test(word))

/** The token after "drei, zwei, eins" or "fünf, sechs, sieben, acht"; `at` where nobody counts aloud. */
function afterCounting(tokens: readonly Token[], at: number): number {
  const values: number[] = []
  let next = at
  for (; next < tokens.length; next++) {
    const number = numberAt(tokens, next)
    if (!number || number.fraction || number.next !== next + 1) break
    values.push(number.value)
  }
  let length = 1
  while (length < values.length && Math.abs(values[length]! - values[length - 1]!) === 1) length++
  return length >= 3 ? at + length : at
}

const wordAt = ({ tokens }: Reader, at: number): string => tokens[at]?.word ?? ''
const endsAt = ({ tokens }: Reader, at: number): boolean => tokens[at]?.ends ?? true
/** The word after a token in the same clause, and the one before it; empty where the clause ends or begins. */
const after = (reader: Reader, at: number): string => (endsAt(reader, at) ? '' : wordAt(reader, at + 1))
const before = (reader: Reader, at: number): string => (at === 0 || endsAt(reader, at - 1) ? '' : wordAt(reader, at - 1))

/** The words of a clause, up to a token and from it on. */
function clauseOf(reader: Reader, at: number): string[] {
  let from = at
  while (from > 0 && !endsAt(reader, from - 1)) from--
  let to = at
  while (!endsAt(reader, to)) to++
  return reader.tokens.slice(from, to + 1).map(({ word }) => word)
}

function claim({ tokens }: Reader, first: number, last: number, meanings: Claim['meanings'], slots: readonly Slot[] = []): Claim {
  return { from: tokens[first]!.from, to: tokens[last]!.to, meanings, slots }
}
const range = ({ tokens }: Reader, first: number, last: number) => ({ from: tokens[first]!.from, to: tokens[last]!.to })
const one = (next: number, ...claims: Claim[]) => ({ claims, next })

/** "Widerstand bleibt", "gleicher Widerstand", "Widerstand halten". */
function readStay(reader: Reader, at: number): ReturnType<Rule> {
  const [word, next] = [wordAt(reader, at), after(reader, at)]
  const stays =
    (word === 'widerstand' && /^(?:bleibt|halten|lassen|stehenlassen)$/.test(next)) ||
    (/^gleich(?:er|en)$/.test(word) && next === 'widerstand')
  return stays ? one(at + 2, claim(reader, at, at + 1, [{ about: 'stay' }])) : null
}

/** "Halbzeit", "die Hälfte geschafft", "ein Drittel geschafft", "fünfzig Prozent geschafft". */
function readShare(reader: Reader, at: number): ReturnType<Rule> {
  const word = wordAt(reader, at)
  if (word === 'halbzeit') return one(at + 1, claim(reader, at, at, [{ about: 'share', value: 1 / 2 }]))
  const of = /^(?:hälfte)$/.test(word) ? { value: 1 / 2, next: at + 1 } : numberAt(reader.tokens, at)
  if (!of) return null
  const percent = wordAt(reader, of.next) === 'prozent' && !endsAt(reader, of.next - 1)
  const value = percent ? of.value / 100 : of.value
  const end = percent ? of.next + 1 : of.next
  if (value <= 0 || value >= 1 || endsAt(reader, end - 1) || !/^(?:geschafft|vorbei|rum)$/.test(wordAt(reader, end))) return null
  return one(end + 1, claim(reader, at, end, [{ about: 'share', value }]))
}

/** "sieben von zehn", "Belastung sieben", "auf einer Acht von zehn". */
function readEffort(reader: Reader, at: number): ReturnType<Rule> {
  const led = /^(?:belastung|anstrengung|intensität)$/.test(wordAt(reader, at)) && !endsAt(reader, at)
  const start = led ? at + 1 : at
  const number = numberAt(reader.tokens, start)
  if (!number || number.article || number.value > 10) return null
  const ten = /^(?:zehn|10)$/.test(wordAt(reader, number.next + 1)) && wordAt(reader, number.next) === 'von' && !endsAt(reader, number.next)
  if (endsAt(reader, number.next - 1) ? !led : !ten && !led) return null
  if (ten && knownKind(after(reader, number.next + 1)) !== undefined) return null
  const end = ten ? number.next + 2 : number.next
  if (!ten && after(reader, number.next - 1) !== '') return null
  return one(
    end,
    claim(reader, at, end - 1, [{ about: 'effort', low: number.value, high: number.value }], [wholeSlot(reader, start, number)]),
  )
}

const wholeSlot = (reader: Reader, at: number, number: NumberPhrase, per = 1, noun?: number): Slot => ({
  ...range(reader, at, number.next - 1),
  figure: 'low',
  form: { as: 'number', figures: number.figures, per, ...(noun !== undefined && { noun: range(reader, noun, noun) }) },
})

/** Nobody turns a knob so far, and no legs go so slowly. */
const LEAST_RPM = 40

/** "neunzig U/min", "90 rpm", "neunzig Umdrehungen", "Trittfrequenz 90", "128 bpm". */
function readCadence(reader: Reader, at: number): ReturnType<Rule> {
  const led = /^(?:trittfrequenz|kadenz|frequenz)$/.test(wordAt(reader, at)) && !endsAt(reader, at)
  const joint = led && /^(?:auf|bei|von|um|liegt|ist)$/.test(wordAt(reader, at + 1)) && !endsAt(reader, at + 1) ? 1 : 0
  const start = led ? at + 1 + joint : at
  const number = numberAt(reader.tokens, start)
  if (!number || number.fraction || number.value < LEAST_RPM || number.value > 250) return null
  const unit = endsAt(reader, number.next - 1) ? '' : wordAt(reader, number.next)
  const slots = [wholeSlot(reader, start, number)]
  const near = /^(?:etwa|rund|circa|ca|ungefähr|um)$/.test(before(reader, start)) && { near: true as const }
  if (unit === 'bpm') return one(number.next + 1, claim(reader, at, number.next, [{ about: 'tempo', value: number.value }], slots))
  let end = -1
  if (unit === 'u' && wordAt(reader, number.next + 1) === 'min') end = number.next + 1
  else if (unit === 'rpm') end = number.next
  else if (TURN.test(unit))
    end =
      /^(?:pro|die)$/.test(after(reader, number.next)) && /^minute$/.test(wordAt(reader, number.next + 2)) ? number.next + 2 : number.next
  else if (led) end = number.next - 1
  if (end < 0) return null
  return one(end + 1, claim(reader, at, end, [{ about: 'cadence', low: number.value, high: number.value, ...near }], slots))
}

/** "Jumps auf acht", "acht hoch, acht runter". */
function readMove(reader: Reader, at: number): ReturnType<Rule> {
  const word = wordAt(reader, at)
  if (knownKind(word) === 'jump' && after(reader, at) === 'auf') {
    const number = numberAt(reader.tokens, at + 2)
    if (!number || number.fraction || number.article || after(reader, number.next - 1) !== '') return null
    return one(
      number.next,
      claim(reader, at, number.next - 1, [{ about: 'moveCounts', value: number.value }], [wholeSlot(reader, at + 2, number)]),
    )
  }
  const up = numberAt(reader.tokens, at)
  if (!up || up.fraction || up.article || !/^(?:hoch|oben)$/.test(after(reader, up.next - 1))) return null
  const down = numberAt(reader.tokens, up.next + 1)
  if (!down || down.value !== up.value || !/^(?:runter|unten)$/.test(after(reader, down.next - 1))) return null
  const slots = [wholeSlot(reader, at, up), wholeSlot(reader, up.next + 1, down)]
  return one(down.next + 1, claim(reader, at, down.next, [{ about: 'moveCounts', value: up.value }], slots))
}

/** A size on the knob with or without its unit. */
interface Amount {
  value: number
  next: number
  slot: Slot
  hasUnit: boolean
}

function amountAt(reader: Reader, at: number): Amount | null {
  const { tokens } = reader
  const slotOf = (last: number, figures: boolean, decimal: boolean, unit?: string): Slot => ({
    ...range(reader, at, last),
    figure: 'low',
    form: { as: 'amount', figures, decimal, article: false, ...(unit !== undefined && { unit }) },
  })
  // "eine Vierteldrehung", "zwei Vierteldrehungen", "die Vierteldrehung".
  const times = numberAt(tokens, at)
  const led = times && !times.fraction && !endsAt(reader, times.next - 1) ? times.next : at
  const part = PART_OF_TURN.exec(wordAt(reader, led))
  if (part) {
    const of = { halb: 1 / 2, viertel: 1 / 4, dreiviertel: 3 / 4, drittel: 1 / 3, achtel: 1 / 8 }[part[1]!]!
    const value = (led === at ? 1 : times!.value) * of
    return { value, next: led + 1, slot: slotOf(led, led !== at && times!.figures, false, 'turn'), hasUnit: true }
  }
  if (!times) return null
  const noun = endsAt(reader, times.next - 1) ? '' : wordAt(reader, times.next)
  const isUnit = reader.unit === 'turn' ? TURN.test(noun) : LEVEL.test(noun) || (noun !== '' && noun === reader.unit)
  if (isUnit && times.value < LEAST_RPM) {
    return { value: times.value, next: times.next + 1, slot: slotOf(times.next, times.figures, times.decimal, 'turn'), hasUnit: true }
  }
  return { value: times.value, next: times.next, slot: slotOf(times.next - 1, times.figures, times.decimal), hasUnit: false }
}

/** "eine Vierteldrehung mehr", "anderthalb drauf", "gib eine halbe Umdrehung dazu", "nimm eine Umdrehung raus". */
function readChange(reader: Reader, at: number): ReturnType<Rule> {
  const amount = amountAt(reader, at)
  if (!amount || amount.value === 0) return null
  let end = amount.next - 1
  let word = ''
  for (let step = 0; step < 4 && !endsAt(reader, end); step++) {
    word = wordAt(reader, end + 1)
    end++
    if (!BETWEEN.has(word)) break
  }
  const isKnob = reader.unit === 'turn'
  // "Zwei mehr", "drei runter" are of rows and counts; a part of one, or a unit, is of the knob.
  if (!amount.hasUnit && !(isKnob && !Number.isInteger(amount.value))) return null
  const sign = MORE.has(word) ? 1 : LESS.has(word) ? -1 : 0
  const verb = clauseOf(reader, at).find((one) => ADDING.has(one))
  const more = before(reader, at) === 'noch' && amount.hasUnit
  if (sign === 0 && !((verb || more) && endsAt(reader, amount.next - 1))) return null
  const value = sign < 0 ? -amount.value : amount.value
  const last = sign === 0 ? amount.next - 1 : end
  const direction: Slot[] =
    sign !== 0 && (word === 'mehr' || word === 'weniger')
      ? [{ ...range(reader, last, last), figure: 'low', form: { as: 'direction' } }]
      : []
  return one(last + 1, claim(reader, at, last, [{ about: 'change', low: value, high: value }], [amount.slot, ...direction]))
}

/** Words of a clause that make a place on the scale of "auf drei". */
const OF_THE_KNOB = /^(?:dreh|dreht|drehen|widerstand|insgesamt|knopf|total|gesamt)$/

/** "auf zweieinhalb", "auf drei Umdrehungen", "insgesamt drei Umdrehungen", "auf drei bis vier Umdrehungen", "auf Stufe zwölf". */
function readTotal(reader: Reader, at: number): ReturnType<Rule> {
  const word = wordAt(reader, at)
  if (endsAt(reader, at) || !/^(?:auf|bei|insgesamt|stufe)$/.test(word)) return null
  const isKnob = reader.unit === 'turn'
  if (word === 'stufe' && isKnob) return null
  const stepped = !isKnob && /^(?:auf|bei)$/.test(word) && wordAt(reader, at + 1) === 'stufe' && !endsAt(reader, at + 1)
  const start = stepped ? at + 2 : at + 1
  const low = amountAt(reader, start)
  if (!low) return null
  const ranged = !low.hasUnit && after(reader, low.next - 1) === 'bis' && !endsAt(reader, low.next)
  const high = ranged ? amountAt(reader, low.next + 1) : null
  const last = high ?? low
  const told =
    last.hasUnit ||
    stepped ||
    word === 'stufe' ||
    (isKnob && (!Number.isInteger(low.value) || clauseOf(reader, at).some((one) => OF_THE_KNOB.test(one))))
  if (!told || (!last.hasUnit && !closes(reader, last.next - 1))) return null
  const orMore = after(reader, last.next - 1) === 'oder'
  if (orMore) return null
  const slots: Slot[] = high ? [low.slot, { ...high.slot, figure: 'high' }] : [low.slot]
  const meaning: Meaning = { about: 'total', low: low.value, high: last.value }
  return one(last.next, claim(reader, start, last.next - 1, [meaning], slots))
}

/** True where what ends at a token belongs to no noun after it. */
const closes = (reader: Reader, last: number): boolean => {
  const word = after(reader, last)
  return word === '' || /^(?:und|dann|hoch|runter|rauf|zurück|gehen|drehen|jetzt)$/.test(word)
}

/** "dreißig Sekunden", "anderthalb Minuten", "1:30": seconds, and the token after it. */
function timeAt(reader: Reader, at: number): { seconds: number; next: number; slot: Slot } | null {
  const { tokens } = reader
  const clock = /^(\d{1,2}):(\d{2})$/.exec(wordAt(reader, at))
  const slot = (last: number, figures: boolean, unit: 'seconds' | 'minutes' | 'clock'): Slot => ({
    ...range(reader, at, last),
    figure: 'low',
    form: { as: 'duration', figures, unit, adjective: false },
  })
  if (clock) return { seconds: Number(clock[1]) * 60 + Number(clock[2]), next: at + 1, slot: slot(at, true, 'clock') }
  const number = numberAt(tokens, at)
  if (!number || endsAt(reader, number.next - 1)) return null
  const per = TIMES.get(wordAt(reader, number.next))
  if (per === undefined) return null
  return { seconds: number.value * per, next: number.next + 1, slot: slot(number.next, number.figures, per === 60 ? 'minutes' : 'seconds') }
}

function readTime(reader: Reader, at: number): ReturnType<Rule> {
  const time = timeAt(reader, at)
  if (!time || time.seconds <= 0) return null
  const isClock = time.slot.form.as === 'duration' && time.slot.form.unit === 'clock'
  // "1:30" alone may be a time of day.
  if (isClock && !/^(?:noch|für|letzten)$/.test(before(reader, at))) return one(time.next)
  return lasting(reader, at, time.next, 'seconds', time.seconds, [time.slot])
}

/** "zwei Achter", "sechzehn Zählzeiten", "vier Takte", "eine Phrase"; and "in acht" of what comes on the beat. */
function readMusic(reader: Reader, at: number): ReturnType<Rule> {
  const number = numberAt(reader.tokens, at)
  if (!number || number.fraction) return null
  const noun = endsAt(reader, number.next - 1) ? '' : wordAt(reader, number.next)
  const music = MUSIC.get(noun)
  if (music) {
    const slot = wholeSlot(reader, at, number, music.per, number.next)
    return lasting(reader, at, number.next + 1, music.unit, number.value * music.per, [slot])
  }
  const isIn = before(reader, at) === 'in' && [4, 8, 16, 32].includes(number.value) && closes(reader, number.next - 1)
  if (!isIn) return null
  const meaning: Meaning = { about: 'until', unit: 'counts', low: number.value, high: number.value, value: number.value } as Meaning
  return one(number.next, claim(reader, at, number.next - 1, [meaning], [wholeSlot(reader, at, number)]))
}

/** What a length of time or music is said of, by the words around it. */
function lasting(reader: Reader, at: number, next: number, unit: Unit, value: number, slots: readonly Slot[]): ReturnType<Rule> {
  const lead = before(reader, at)
  const behind = after(reader, next - 1)
  const left: Meaning = { about: 'left', unit, value }
  const length = (on: Subject, bound?: Bound): Meaning => ({
    about: 'length',
    unit,
    low: value,
    high: value,
    ...(Object.keys(on).length > 0 && { on }),
    ...(bound && { bound }),
  })
  const claimed = (...meanings: Claim['meanings']) => one(next, claim(reader, at, next - 1, meanings, slots))
  if (/^(?:geschafft|vorbei|rum|hinter|gefahren)$/.test(behind) || lead === 'seit') {
    return unit === 'seconds' ? claimed({ about: 'gone', value }) : one(next)
  }
  if (lead === 'in') return claimed({ about: 'until', unit, value } as Meaning)
  if (behind === 'bis' || lead === 'bis') return claimed({ about: 'until', unit, value, ...targetAfter(reader, next) } as Meaning)
  if (/^(?:noch|letzten|letzte|übrig)$/.test(lead) || /^(?:noch|übrig|bleiben)$/.test(behind)) return claimed(left, length({}))
  const on = subjectAfter(reader, next)
  if (/^(?:etwa|rund|circa|ca|ungefähr|fast|knapp)$/.test(lead)) return claimed(length(on, 'near'), { ...left, near: true })
  if (/^(?:unter|maximal|höchstens)$/.test(lead)) return claimed(length(on, 'under'))
  if (/^(?:über|mindestens)$/.test(lead)) return claimed(length(on, 'over'))
  return claimed(length(on), left)
}

/** "bis zum Berg", "bis zur Pause". */
function targetAfter(reader: Reader, at: number): { kind?: string } {
  const noun = /^(?:zum|zur|zu|die|der|den|das)$/.test(after(reader, at)) ? wordAt(reader, at + 2) : ''
  const kind = knownKind(noun)
  return kind === undefined || kind === 'recover' ? {} : { kind }
}

/** "dreißig Sekunden Push", "eine Minute locker", "zwei Minuten im Stehen". */
function subjectAfter(reader: Reader, next: number): Subject {
  const words: string[] = []
  for (let at = next - 1; words.length < 2 && !endsAt(reader, at); at++) words.push(wordAt(reader, at + 1))
  for (const word of words) {
    if (EASY.has(word)) return { quality: 'easy' }
    if (HARD.has(word)) return { quality: 'hard' }
    if (POSTURE.has(word)) return { posture: true }
    const kind = knownKind(word)
    if (kind !== undefined) return { kind }
  }
  return {}
}

/** "drei Pushes", "noch zwei Berge", "Push zwei von drei", "zweiter Push", "letzte Runde", "einer geschafft". */
function readRow(reader: Reader, at: number): ReturnType<Rule> {
  return lastOf(reader, at) ?? ordinalIn(reader, at) ?? named(reader, at) ?? counted(reader, at)
}

function lastOf(reader: Reader, at: number): ReturnType<Rule> {
  const word = wordAt(reader, at)
  const back = /^letzte[rns]?$/.test(word) ? 0 : /^vorletzte[rns]?$/.test(word) ? 1 : null
  const kind = back === null ? undefined : knownKind(after(reader, at))
  if (back === null || kind === undefined) return null
  const past =
    /^(?:war|geschafft|vorbei)$/.test(after(reader, at + 1)) ||
    before(reader, before(reader, at) === 'der' || before(reader, at) === 'die' ? at - 1 : at) === 'war'
  return one(at + 2, claim(reader, at, at + 1, [{ about: 'last', back, kind, ...(past && { past: true as const }) }]))
}

/** "von drei" behind a place; the token after it where it is there. */
function ofAt(reader: Reader, next: number): { of?: number; next: number; slots: Slot[] } {
  if (endsAt(reader, next - 1) || wordAt(reader, next) !== 'von' || endsAt(reader, next)) return { next, slots: [] }
  const number = numberAt(reader.tokens, next + 1)
  if (!number || number.fraction || number.article || number.value < 2 || after(reader, number.next - 1) !== '') return { next, slots: [] }
  return { of: number.value, next: number.next, slots: [{ ...wholeSlot(reader, next + 1, number), figure: 'of' }] }
}

function ordinalIn(reader: Reader, at: number): ReturnType<Rule> {
  const ordinal = ordinalOf(wordAt(reader, at))
  const kind = ordinal ? knownKind(after(reader, at)) : undefined
  if (!ordinal || kind === undefined) return null
  const { of, next, slots } = ofAt(reader, at + 2)
  const own: Slot = { ...range(reader, at, at), figure: 'low', form: { as: 'ordinal', figures: false } }
  const done = /^(?:geschafft|vorbei)$/.test(after(reader, next - 1))
  const meaning: Meaning = { about: done ? 'done' : 'place', value: ordinal.value, kind, ...(of !== undefined && { of }) }
  return one(next, claim(reader, at, next - 1, [meaning], [own, ...slots]))
}

/** "Push zwei", "Runde drei von vier", "Nummer zwei von drei". */
function named(reader: Reader, at: number): ReturnType<Rule> {
  const word = wordAt(reader, at)
  const kind = knownKind(word)
  if ((kind === undefined && word !== 'nummer') || endsAt(reader, at)) return null
  const start = wordAt(reader, at + 1) === 'nummer' ? at + 2 : at + 1
  const number = numberAt(reader.tokens, start)
  if (!number || number.fraction || number.value < 1 || number.value > 20 || (number.article && wordAt(reader, start) !== 'eins'))
    return null
  const { of, next, slots } = ofAt(reader, number.next)
  if (of === undefined && (!closes(reader, number.next - 1) || kind === undefined)) return null
  const meaning: Meaning = { about: 'place', value: number.value, ...(kind !== undefined && { kind }), ...(of !== undefined && { of }) }
  return one(next, claim(reader, at, next - 1, [meaning], [wholeSlot(reader, start, number), ...slots]))
}

const PLURAL_ONLY = /(?:es|s|e|en|n|er|ge|te|ze)$/

function counted(reader: Reader, at: number): ReturnType<Rule> {
  const number = numberAt(reader.tokens, at)
  if (!number || number.fraction) return null
  const kind = endsAt(reader, number.next - 1) ? undefined : knownKind(wordAt(reader, number.next))
  if (kind === undefined || number.value < 1 || number.value > 40) return null
  const noun = number.next
  // "Ein Push" is any; "noch ein Push" is how many there are.
  const lead = before(reader, at)
  if (number.value === 1 && lead !== 'noch') return null
  if (number.value > 1 && !PLURAL_ONLY.test(wordAt(reader, noun))) return null
  const slots = [wholeSlot(reader, at, number, 1, noun)]
  const claimed = (meaning: Meaning) => one(noun + 1, claim(reader, at, noun, [meaning], slots))
  if (/^(?:geschafft|vorbei|rum)$/.test(after(reader, noun))) return claimed({ about: 'done', value: number.value, kind })
  if (lead === 'noch' || /^(?:letzten)$/.test(lead)) return claimed({ about: 'more', value: number.value, kind })
  if (kind === 'round') return claimed({ about: 'rounds', value: number.value })
  if (kind === 'set') return claimed({ about: 'rounds', value: number.value, kind: 'set' })
  return claimed({ about: 'ahead', value: number.value, kind })
}
