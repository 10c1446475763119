import type { Lexicon, Mark } from './lexicon.ts'
import { dictionaryOf, type Meaning } from './meanings.ts'
import { type Span, type Token, tokensOf } from './tokens.ts'

/** A token, or the longest row of words that means something together. */
export type LineItem = Token | (Span & { readonly kind: 'said'; readonly tight: boolean; readonly meanings: readonly Meaning[] })

/** A line as what it says, word by word; words that mean nothing stay words. */
export function itemsOf(line: string, lexicon: Lexicon): LineItem[] {
  const { meanings, longest } = dictionaryOf(lexicon)
  const tokens = tokensOf(line)
  const items: LineItem[] = []
  for (let at = 0; at < tokens.length; ) {
    const found = tokens[at]!.kind === 'word' ? longestAt(tokens, at, meanings, longest) : null
    items.push(found?.item ?? tokens[at]!)
    at = found?.next ?? at + 1
  }
  return items
}

function longestAt(tokens: readonly Token[], at: number, meanings: ReadonlyMap<string, readonly Meaning[]>, longest: number) {
  let key = ''
  let best: { item: LineItem; next: number } | null = null
  const first = tokens[at]!
  for (let next = at, words = 0; next < tokens.length && words < longest; next += 1) {
    const token = tokens[next]!
    // "travel-back": a hyphen inside a word joins what is looked up as two.
    if (token.kind === 'sign' && token.sign === '-' && token.tight && tokens[next + 1]?.kind === 'word' && tokens[next + 1]!.tight) continue
    if (token.kind !== 'word') break
    key = key === '' ? token.text : `${key} ${token.text}`
    words += 1
    const found = meanings.get(key)
    if (found) best = { item: { kind: 'said', from: first.from, to: token.to, tight: first.tight, meanings: found }, next: next + 1 }
  }
  return best
}

/** Whether an item is one of these marks. */
export function isMark(item: LineItem | undefined, ...marks: readonly Mark[]): boolean {
  return item?.kind === 'said' && item.meanings.some((meaning) => meaning.field === 'mark' && marks.includes(meaning.value))
}

/** The number an item is, in figures or in words. */
export function numberIn(item: LineItem | undefined, field: 'number' | 'addition' = 'number'): number | undefined {
  if (item?.kind === 'number') return field === 'number' ? item.value : undefined
  if (item?.kind !== 'said') return undefined
  const found = item.meanings.find((meaning) => meaning.field === field)
  return found?.value as number | undefined
}
