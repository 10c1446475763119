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

/** A text cut into words: "forty-five" is two, "1½" one. */
export function tokensOf(text: string): Token[] {
  return [...text.matchAll(WORD)].map((match) => {
    const from = match.index
    const to = from + match[0].length
    return { word: match[0].toLowerCase().replace(/\s/g, '').replaceAll('’', "'"), from, to, ends: CLAUSE_END.test(text.slice(to)) }
  })
}
