import type { Claim } from './claim.ts'
import type { Token } from './tokens.ts'

const UNITS = new Set(['turn', 'turns', 'level', 'levels', 'gear', 'gears', 'notch', 'notches', 'click', 'clicks', 'step', 'steps'])

/** A text as its claims are read: its words, the bike's own unit, and what has been found. */
export interface Reader {
  tokens: readonly Token[]
  unit: string
  claims: Claim[]
}

export const wordAt = ({ tokens }: Reader, at: number): string => tokens[at]?.word ?? ''
export const endsAt = ({ tokens }: Reader, at: number): boolean => tokens[at]?.ends ?? true
export const isUnit = ({ unit }: Reader, word: string): boolean =>
  UNITS.has(word) || (word !== '' && (word === unit || word === `${unit}s`))

/** The words before "option": what comes after it is about another version. */
export function beforeOption(tokens: readonly Token[]): readonly Token[] {
  const option = tokens.findIndex(({ word }) => word === 'option' || word === 'options')
  return option < 0 ? tokens : tokens.slice(0, option)
}

/** Notes a claim that takes up some tokens, and says where to read on. */
export function claim<C extends Claim>(reader: Reader, first: number, last: number, made: Omit<C, 'from' | 'to'>): number {
  reader.claims.push({ ...made, from: reader.tokens[first]!.from, to: reader.tokens[last]!.to } as C)
  return last + 1
}

export type Of<About extends Claim['about']> = Extract<Claim, { about: About }>
