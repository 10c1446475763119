import type { Random } from '#engine/roughIn/seededRandom.ts'

/** The wordings of one class: none is dealt again before the others of its kind have been. */
export interface Deck {
  /** Wordings with those first that were said least; those said equally often in an order the seed gives. */
  order: (wordings: readonly string[]) => string[]
  /** Notes what is said. */
  use: (wording: string) => void
  uses: (wording: string) => number
}

/** Wordings and whole texts are counted alike: leaders repeat themselves in both. */
export function makeDeck(random: Random): Deck {
  const used = new Map<string, number>()
  const ranks = new Map<string, number>()
  const rank = (wording: string): number => {
    const known = ranks.get(wording)
    if (known !== undefined) return known
    const drawn = random()
    ranks.set(wording, drawn)
    return drawn
  }
  const uses = (wording: string): number => used.get(wording) ?? 0
  return {
    order: (wordings) => {
      for (const wording of wordings) rank(wording)
      return wordings.toSorted((a, b) => uses(a) - uses(b) || rank(a) - rank(b))
    },
    use: (wording) => used.set(wording, uses(wording) + 1),
    uses,
  }
}
