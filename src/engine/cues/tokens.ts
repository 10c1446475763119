import type { Cue } from '#plan/model.ts'

/** A word or number of a text, in lower case, with where it stands. */
export interface Token {
  word: string
  from: number
  to: number
  /** True where a sentence or clause ends right after it. */
  ends: boolean
}

/** Numbers with a fraction sign, times like 1:30, words with an apostrophe, and single fraction signs. */
const WORD = /\d+(?:[.,:]\d+)?\s?[½⅓⅔¼¾⅛⅜⅝⅞]|[½⅓⅔¼¾⅛⅜⅝⅞]|\d+\/\d+|\d+(?:[.,:]\d+)?|\p{L}+(?:['’]\p{L}+)*/gu
/** What parts two clauses: also a spaced dash, which a hyphen between words is not. */
const CLAUSE_END = /^\s*(?:[.!?;:,…()“”"]|[–—-]\s|\s[–—-]\s|$)/u

const known = new WeakMap<Cue, readonly Token[]>()

/** The words of a cue; cut once for each cue object. */
export function tokensOfCue(cue: Cue): readonly Token[] {
  let tokens = known.get(cue)
  if (tokens === undefined) {
    tokens = tokensOf(cue.text)
    known.set(cue, tokens)
  }
  return tokens
}

/** A text cut into words: "forty-five" is two, "1½" one. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = []
  for (const match of text.matchAll(WORD)) {
    const from = match.index
    const to = from + match[0].length
    tokens.push({ word: plain(match[0]), from, to, ends: endsClause(text, to) })
  }
  return tokens
}

const plain = (word: string): string => word.toLowerCase().replace(/\s/g, '').replaceAll('’', "'")

/** Most words stand before a space and a letter, which ends nothing; only the rest is looked at closely. */
function endsClause(text: string, at: number): boolean {
  if (text[at] === ' ' && /[\p{L}\d]/u.test(text[at + 1] ?? '')) return false
  return CLAUSE_END.test(text.slice(at))
}
