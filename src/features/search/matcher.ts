import uFuzzy from '@leeoniya/ufuzzy'
import { folded, spelledOut } from '#plan/search/folded.ts'

/** Letters and figures of any alphabet; a needle in plain ones takes the quicker expressions. */
const ANY = {
  unicode: true,
  interSplit: "[^\\p{L}\\p{N}']+",
  intraSplit: '\\p{Ll}\\p{Lu}',
  interBound: '[^\\p{L}\\p{N}]',
  intraBound: '\\p{L}\\p{N}|\\p{N}\\p{L}|\\p{Ll}\\p{Lu}',
  intraChars: "[\\p{L}\\p{N}']",
  intraContr: "'\\p{L}{1,2}\\b",
}

/** From how many letters a word may have one that is wrong, missing, too many, or in its neighbor's place. */
const FORGIVEN_FROM = 4

const ONE_SLIP = {
  intraMode: 1 as const,
  intraRules: (term: string) => {
    const slip = term.length >= FORGIVEN_FROM ? 1 : 0
    return {
      intraSlice: [1, Number.POSITIVE_INFINITY] as [number, number],
      intraIns: slip,
      intraSub: slip,
      intraTrn: slip,
      intraDel: slip,
    } as const
  },
}

const plain = { strict: new uFuzzy(), forgiving: new uFuzzy(ONE_SLIP) }
const any = { strict: new uFuzzy(ANY), forgiving: new uFuzzy({ ...ANY, ...ONE_SLIP }) }

/** How well a text fits: it begins so, words in it begin so, it has it somewhere, or it has nearly it. */
const FIT = { start: 0, word: 1, middle: 2, nearly: 3 } as const
export type Fit = (typeof FIT)[keyof typeof FIT]

/** One text that fits, by its place in the list. */
interface Hit {
  index: number
  fit: Fit
}

/**
 * The texts that have every word of a query, in any order, anywhere in them; where none has, those that have nearly so.
 *
 * @param texts as `foundBy` gives them
 */
export function hitsOf(texts: readonly string[], query: string): Hit[] {
  const needle = folded(query)
  if (needle === '') return signsIn(texts, query.trim())
  const needles = [...new Set([needle, spelledOut(query)])]
  const { strict, forgiving } = /^[a-z0-9 ]*$/.test(needle) ? plain : any
  const hits = found(strict, texts, needles)
  if (hits.length > 0) return hits.map((index) => ({ index, fit: fitOf(texts[index]!, needles) }))
  return found(forgiving, texts, needles).map((index) => ({ index, fit: FIT.nearly }))
}

/** Each word by itself, the longest first, among what is left: their order does not count. */
function found(matcher: uFuzzy, texts: readonly string[], needles: readonly string[]): number[] {
  const all = new Set<number>()
  for (const needle of needles) {
    let left: number[] | undefined
    for (const word of needle.split(' ').toSorted((a, b) => b.length - a.length)) left = matcher.filter(texts as string[], word, left) ?? []
    for (const index of left ?? []) all.add(index)
  }
  return [...all].sort((a, b) => a - b)
}

function fitOf(text: string, needles: readonly string[]): Fit {
  if (needles.some((needle) => text.startsWith(needle))) return FIT.start
  const spaced = ` ${text}`
  return needles.some((needle) => needle.split(' ').every((word) => spaced.includes(` ${word}`))) ? FIT.word : FIT.middle
}

const signsIn = (texts: readonly string[], signs: string): Hit[] =>
  signs === ''
    ? []
    : texts.flatMap((text, index) => (text.includes(signs) ? [{ index, fit: text.startsWith(signs) ? FIT.start : FIT.middle }] : []))
