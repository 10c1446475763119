import type { Claim, Figure, Form, Meaning, Slot } from '#engine/cues/claims/claim.ts'
import type { Token } from '#engine/cues/tokens.ts'
import type { Mark } from './scope.ts'
import { SAFE_AFTER, SCALE_UNITS } from './words.ts'

/** A text as its claims are read: its words, what each may be read as, and the bike's own unit. */
export interface Reader {
  tokens: readonly Token[]
  marks: readonly Mark[]
  /** Of the ride's bike, in lower case. */
  unit: string
}

/** What a rule reads at a token: claims, if it made any, and the token to read on at. Null where it is not meant. */
export interface Reading {
  claims: readonly Claim[]
  next: number
}

export type Rule = (reader: Reader, at: number) => Reading | null

export const wordAt = ({ tokens }: Reader, at: number): string => tokens[at]?.word ?? ''
/** True where a clause ends after a token, and past the last one. */
export const endsAt = ({ tokens }: Reader, at: number): boolean => tokens[at]?.ends ?? true
/** True where a clause starts at a token. */
export const startsAt = (reader: Reader, at: number): boolean => at === 0 || endsAt(reader, at - 1)
/** The word after a token in the same clause; empty where the clause ends. */
export const wordAfter = (reader: Reader, at: number): string => (endsAt(reader, at) ? '' : wordAt(reader, at + 1))
/** The word before a token in the same clause. */
export const wordBefore = (reader: Reader, at: number): string => (startsAt(reader, at) ? '' : wordAt(reader, at - 1))

/** True where what ends at a token is not counted or led on by a word that belongs to it: "two", "two, then up", "two and go". */
export function closes(reader: Reader, last: number): boolean {
  const after = wordAfter(reader, last)
  return after === '' || SAFE_AFTER.has(after)
}

/** Whether words stand at a place with no clause ending between them; `|` parts alternatives of a word. */
export function says(reader: Reader, at: number, words: string): boolean {
  const wanted = choicesOf(words)
  for (let i = 0; i < wanted.length; i++) {
    if (!wanted[i]!.includes(wordAt(reader, at + i))) return false
    if (i < wanted.length - 1 && endsAt(reader, at + i)) return false
  }
  return true
}

/** The words of the grammar, taken apart once; there are as many as the rules name. */
const apart = new Map<string, readonly string[][]>()

function choicesOf(words: string): readonly string[][] {
  let choices = apart.get(words)
  if (choices === undefined) {
    choices = words.split(' ').map((choice) => choice.split('|'))
    apart.set(words, choices)
  }
  return choices
}

/** A knob is counted in turns, nearly always with a fraction; other scales in whole levels up to a hundred. */
export const isKnob = ({ unit }: Reader): boolean => unit === 'turn'

export function isUnit(reader: Reader, word: string): boolean {
  if (word === '') return false
  const single = word.endsWith('s') && word !== reader.unit ? word.slice(0, -1) : word
  return single === reader.unit || (!isKnob(reader) && SCALE_UNITS.has(single))
}

/** A claim of the tokens from `first` to `last`, both taken up. */
export function claim({ tokens }: Reader, first: number, last: number, meanings: Claim['meanings'], slots: readonly Slot[] = []): Claim {
  return { from: tokens[first]!.from, to: tokens[last]!.to, meanings, slots }
}

export const read = (next: number, ...claims: Claim[]): Reading => ({ claims, next })

/** The slot of the tokens from `first` to `last`. */
export const slot = ({ tokens }: Reader, first: number, last: number, form: Form, figure: Figure = 'low'): Slot => ({
  from: tokens[first]!.from,
  to: tokens[last]!.to,
  figure,
  form,
})

/** The range of a noun that has to agree with a number. */
const nounAt = ({ tokens }: Reader, at: number): { from: number; to: number } => ({ from: tokens[at]!.from, to: tokens[at]!.to })

/** The slot of a plain number, with the noun that agrees with it. */
export const numberSlot = (
  reader: Reader,
  first: number,
  next: number,
  figures: boolean,
  more: { noun?: number; per?: number; figure?: Figure } = {},
): Slot =>
  slot(
    reader,
    first,
    next - 1,
    { as: 'number', figures, per: more.per ?? 1, ...(more.noun !== undefined && { noun: nounAt(reader, more.noun) }) },
    more.figure,
  )

export type Meanings = [Meaning, ...Meaning[]]
