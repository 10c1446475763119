import { isMark, itemsOf, numberIn } from './items.ts'
import type { Lexicon } from './lexicon.ts'
import type { Span } from './tokens.ts'

/** Stands by itself between the blocks of one line; in a fraction it stands between figures. */
export const SEPARATOR = '/'

/** Blocks that stand next to each other in a line, ridden once, or so many rounds. */
interface LineParts {
  readonly rounds?: Span & { readonly count: number }
  readonly parts: readonly Span[]
}

// Quotes are stepped over whole, so that words that are said may hold a slash.
const QUOTED_OR_SEPARATOR = /["“”„«»][^"“”„«»]{0,600}["“”«»]|(?<=^|\s)\/(?=\s|$)/gu

/**
 * The parts of a line, each a block: “climb 8 / rest 4”. Rounds take in all that stands behind them: “3 rounds: climb 8 / rest 4”.
 * Parts without a letter or figure are left out.
 */
export function partsOf(line: string, lexicon: Lexicon): LineParts[] {
  const found: { rounds?: LineParts['rounds']; parts: Span[] }[] = [{ parts: [] }]
  for (const part of cut(line)) {
    const rounds = roundsIn(line, part, lexicon)
    if (rounds) found.push({ rounds, parts: [] })
    const span = rounds ? { from: rounds.to, to: part.to } : part
    if (/[\p{L}\p{N}]/u.test(line.slice(span.from, span.to))) found.at(-1)!.parts.push(span)
  }
  return found.filter(({ rounds, parts }) => rounds !== undefined || parts.length > 0)
}

function cut(line: string): Span[] {
  const spans: Span[] = []
  let from = 0
  for (const match of line.matchAll(QUOTED_OR_SEPARATOR)) {
    if (match[0] !== SEPARATOR) continue
    spans.push({ from, to: match.index })
    from = match.index + 1
  }
  return [...spans, { from, to: line.length }]
}

/** “3 rounds of” at the beginning of a part. */
function roundsIn(line: string, { from, to }: Span, lexicon: Lexicon): LineParts['rounds'] {
  const items = itemsOf(line.slice(from, to), lexicon)
  const [first, second] = items
  const count = numberIn(first)
  if (count === undefined || !Number.isInteger(count) || !isMark(second, 'rounds')) return undefined
  let last = 1
  while (isMark(items[last + 1], 'filler')) last += 1
  return { count, from: from + first!.from, to: from + items[last]!.to }
}
