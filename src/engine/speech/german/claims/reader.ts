import type { Claim, Slot } from '#engine/cues/claims/claim.ts'
import type { Token } from '#engine/cues/tokens.ts'
import type { NumberPhrase } from './numberAt.ts'

/** A text as its claims are read. */
export interface Reader {
  tokens: readonly Token[]
  unit: string
  /** Whether nothing is claimed at a token. */
  silent: readonly boolean[]
}

/** What is read at a token, and the token to read on at; null where it is not meant. */
export type Rule = (reader: Reader, at: number) => { claims: readonly Claim[]; next: number } | null

export const wordAt = ({ tokens }: Reader, at: number): string => tokens[at]?.word ?? ''
export const endsAt = ({ tokens }: Reader, at: number): boolean => tokens[at]?.ends ?? true
/** The word after a token in the same clause, and the one before it; empty where the clause ends or begins. */
export const after = (reader: Reader, at: number): string => (endsAt(reader, at) ? '' : wordAt(reader, at + 1))
export const before = (reader: Reader, at: number): string => (at === 0 || endsAt(reader, at - 1) ? '' : wordAt(reader, at - 1))

/** The words of a clause, up to a token and from it on. */
export function clauseOf(reader: Reader, at: number): string[] {
  let from = at
  while (from > 0 && !endsAt(reader, from - 1)) from--
  let to = at
  while (!endsAt(reader, to)) to++
  return reader.tokens.slice(from, to + 1).map(({ word }) => word)
}

export function claim({ tokens }: Reader, first: number, last: number, meanings: Claim['meanings'], slots: readonly Slot[] = []): Claim {
  return { from: tokens[first]!.from, to: tokens[last]!.to, meanings, slots }
}
export const range = ({ tokens }: Reader, first: number, last: number) => ({ from: tokens[first]!.from, to: tokens[last]!.to })
export const one = (next: number, ...claims: Claim[]) => ({ claims, next })

export const wholeSlot = (reader: Reader, at: number, number: NumberPhrase, per = 1, noun?: number): Slot => ({
  ...range(reader, at, number.next - 1),
  figure: 'low',
  form: { as: 'number', figures: number.figures, per, ...(noun !== undefined && { noun: range(reader, noun, noun) }) },
})

/** True where what ends at a token belongs to no noun after it. */
export const closes = (reader: Reader, last: number): boolean => {
  const word = after(reader, last)
  return word === '' || /^(?:und|dann|hoch|runter|rauf|zurück|gehen|drehen|jetzt)$/.test(word)
}
