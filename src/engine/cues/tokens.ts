import type { Cue } from '#plan/model.ts'

/** A word or number of a text, in lower case, with where it stands. */
export interface Token {
  word: string
  from: number
  to: number
  /** True where a sentence or clause ends right after it. */
  ends: boolean
  /** True where a whole sentence ends right after it, and whether that is a question. */
  stops: boolean
  asks: boolean
  /** True where a dash or hyphen joins it to the next word: "thirty-second", "3–4". */
  joined: boolean
  /** A plus or minus written right before a number. */
  sign?: 1 | -1
}

/**
 * Numbers with a fraction sign, times like 1:30, words with an apostrophe, and single fraction signs. A comma makes a
 * decimal only between two numbers, so that "5,4,3,2,1" is five of them.
 */
const WORD =
  /\d+(?:[.:]\d+|(?<!,\d{0,6}),\d+(?![\d,]))?\s?[½⅓⅔¼¾⅛⅜⅝⅞]|[½⅓⅔¼¾⅛⅜⅝⅞]|\d+\/\d+|\d+(?:[.:]\d+|(?<!,\d{0,6}),\d+(?![\d,]))?|\p{L}+(?:['’]\p{L}+)*/gu
/** What parts two clauses: also a spaced dash, which a hyphen between words is not. */
const CLAUSE_END = /\s*(?:[.!?;:,…()“”"]|[–—-]\s|\s[–—-]\s|$)/uy
const SENTENCE_END = /[“”")\s]*[.!?;…]/uy
const QUESTION = /[“”")\s]*[.!…]*\?/uy
const JOINT = /[–—-](?=[\p{L}\d½⅓⅔¼¾⅛⅜⅝⅞])/uy

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

/** A text cut into words: "forty-five" is two, "1½" one. Cost: linear in the text. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = []
  for (const match of text.matchAll(WORD)) {
    const from = match.index
    const to = from + match[0].length
    const sign = signBefore(text, from)
    tokens.push({ word: spoken(text, plain(match[0]), to), from, to, ...borderAt(text, to), ...(sign && { sign }) })
  }
  return tokens
}

/** "sittin'" is "sitting". */
const spoken = (text: string, word: string, to: number): string =>
  /^\p{L}{2,}in$/u.test(word) && /['’]/.test(text[to] ?? '') ? `${word}g` : word

const plain = (word: string): string => word.toLowerCase().replace(/\s/g, '').replaceAll('’', "'")

/** The sign written before a number; a dash between two is none. */
function signBefore(text: string, at: number): 1 | -1 | undefined {
  const sign = text[at - 1]
  if (sign !== '+' && sign !== '−' && sign !== '-') return undefined
  if (!/[\d½⅓⅔¼¾⅛⅜⅝⅞]/.test(text[at]!) || (at > 1 && /[\p{L}\d½⅓⅔¼¾⅛⅜⅝⅞]/u.test(text[at - 2]!))) return undefined
  return sign === '+' ? 1 : -1
}

/** Most words stand before a space and a letter, which ends nothing; only the rest is looked at closely. */
function borderAt(text: string, at: number): Omit<Token, 'word' | 'from' | 'to' | 'sign'> {
  if (text[at] === ' ' && /[\p{L}\d]/u.test(text[at + 1] ?? '')) return INSIDE
  const stops = meets(SENTENCE_END, text, at)
  return { ends: stops || meets(CLAUSE_END, text, at), stops, asks: stops && meets(QUESTION, text, at), joined: meets(JOINT, text, at) }
}

const INSIDE = { ends: false, stops: false, asks: false, joined: false }

/** Whether a sticky pattern holds at a place, without cutting the text. */
function meets(pattern: RegExp, text: string, at: number): boolean {
  pattern.lastIndex = at
  return pattern.test(text)
}
