import type { Claim, Meaning, Slot } from '#engine/cues/claims/claim.ts'
import type { Token } from '#engine/cues/tokens.ts'
import { ADDING, BETWEEN, knownKind, LESS, LEVEL, MORE, PART_OF_TURN, SILENT, TURN } from './lexicon.ts'
import { numberAt } from './numberAt.ts'
import { after, before, claim, clauseOf, closes, endsAt, one, type Reader, type Rule, range, wholeSlot, wordAt } from './reader.ts'
import { readMusic, readTime } from './readLength.ts'
import { readRow } from './readRow.ts'

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
