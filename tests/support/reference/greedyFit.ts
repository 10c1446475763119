import type { FitItem } from '#engine/fit/fitLengths.ts'

/** What an item costs at a length: weight × ((n − d) ÷ d)². */
export const costOf = ({ drafted, weight }: FitItem, length: number): number => weight * ((length - drafted) / drafted) ** 2

/**
 * A yardstick for `fitLengths`: the same problem an eight at a time. From the least lengths on, each eight goes where it
 * costs least. Costs are convex, so that is exact where every item is played once, and it is not with sets. Null where
 * the total is out of reach.
 */
export function greedyFit(items: readonly FitItem[], total: number): { lengths: number[]; cost: number } | null {
  const lengths = items.map(({ least }) => least)
  let filled = items.reduce((sum, { rounds, least }) => sum + rounds * least, 0)
  while (filled < total) {
    const open = items.flatMap((item, i) => (lengths[i]! < item.most && filled + item.rounds <= total ? [i] : []))
    if (open.length === 0) return null
    const step = (i: number) => (costOf(items[i]!, lengths[i]! + 1) - costOf(items[i]!, lengths[i]!)) / items[i]!.rounds
    const next = open.reduce((best, i) => (step(i) < step(best) ? i : best))
    lengths[next]!++
    filled += items[next]!.rounds
  }
  if (filled !== total) return null
  return { lengths, cost: items.reduce((sum, item, i) => sum + costOf(item, lengths[i]!), 0) }
}
