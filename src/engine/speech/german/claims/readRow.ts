import type { Meaning, Slot } from '#engine/cues/claims/claim.ts'
import { knownKind } from './lexicon.ts'
import { numberAt, ordinalOf } from './numberAt.ts'
import { after, before, claim, closes, endsAt, one, type Reader, type Rule, range, wholeSlot, wordAt } from './reader.ts'

/** "drei Pushes", "noch zwei Berge", "Push zwei von drei", "zweiter Push", "letzte Runde", "einer geschafft". */
export function readRow(reader: Reader, at: number): ReturnType<Rule> {
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
