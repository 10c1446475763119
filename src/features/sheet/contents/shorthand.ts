import { words } from '#words/words.ts'

/** A leader's own short form and what it stands for. */
export interface Short {
  short: string
  long: string
}

/** Terms of a person's dictionary; enough for any shorthand, and few enough to be looked for in every line. */
const MOST_TERMS = 60
const LONGEST = 40

/** One entry a line: "TB = travel-back". */
export const writeShorthand = (terms: readonly Short[]): string => terms.map(({ short, long }) => `${short} = ${long}`).join('\n')

/** Reads such lines; the problem is one sentence that names the first line that is none. Empty lines are left out. */
export function readShorthand(text: string): { ok: true; terms: Short[] } | { ok: false; problem: string } {
  const terms: Short[] = []
  for (const line of text.split('\n').map((one) => one.trim())) {
    if (line === '') continue
    const [, short = '', long = ''] = /^([^=]*)=(.*)$/.exec(line) ?? []
    const term = { short: short.trim(), long: long.trim() }
    if (term.short === '' || term.long === '') return { ok: false, problem: words.sheet.noAbbreviation({ line }) }
    if ([...term.short, ...term.long].length > 2 * LONGEST)
      return { ok: false, problem: words.sheet.longAbbreviation({ start: term.long.slice(0, 20) }) }
    if (terms.some((other) => sameWords(other.long, term.long))) return { ok: false, problem: words.sheet.twoAbbreviations(term) }
    terms.push(term)
  }
  return terms.length > MOST_TERMS ? { ok: false, problem: words.sheet.manyAbbreviations({ most: MOST_TERMS }) } : { ok: true, terms }
}

const sameWords = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase()

/** Shortens texts, and remembers which short forms it has used: they are what the legend explains. */
interface Shortener {
  shorten: (text: string) => string
  used: () => Short[]
}

/**
 * Puts short forms in place of whole words, in any case and with a plural's s kept; of two terms
 * that begin alike the longer one is taken.
 */
export function shortenerOf(terms: readonly Short[]): Shortener {
  const used = new Set<Short>()
  if (terms.length === 0) return { shorten: (text) => text, used: () => [] }
  const longestFirst = terms.toSorted((a, b) => b.long.length - a.long.length)
  const patterns = longestFirst.map(({ long }) => long.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|')
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${patterns})(?=s?(?![\\p{L}\\p{N}]))`, 'giu')
  return {
    shorten: (text) =>
      text.replace(pattern, (found) => {
        const term = terms.find(({ long }) => sameWords(long, found))!
        used.add(term)
        return term.short
      }),
    used: () => terms.filter((term) => used.has(term)),
  }
}
