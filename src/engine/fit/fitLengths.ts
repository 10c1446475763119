/** One block (or part of a set) to be given a whole length, in eights. */
export interface FitItem {
  /** Drafted length, above 0; may be fractional. */
  drafted: number
  /** Least and most whole eights. */
  least: number
  most: number
  /** Only multiples of so many eights will do: of a whole figure. One unless given. */
  step?: number
  /** How often it is played: the rounds of its set, else 1. */
  rounds: number
  /** How much it matters that it keeps its length. */
  weight: number
}

/** Whole eights for every item, with what the change costs. */
interface Fitted {
  lengths: number[]
  cost: number
}

/** Total that can be reached on either side of one that cannot. */
export interface Nearest {
  below: number | null
  above: number | null
}

type FitResult = { ok: true; fitted: Fitted } | { ok: false; nearest: Nearest }

/** What an item costs at a length: weight × ((n − d) ÷ d)². */
const costOf = ({ drafted, weight }: FitItem, length: number): number => weight * ((length - drafted) / drafted) ** 2

/** Costs nearer than this are the same; ties are then broken by rule and not by rounding. */
const SAME = 1e-9

/** The best way to fill a total with the items from one on. */
interface Best {
  cost: number
  changed: number
  /** Which items change, the earliest at the highest bit. */
  mask: bigint
  length: number
}

/**
 * Whole lengths nᵢ between their bounds with Σ roundsᵢ·nᵢ = total that cost least,
 * Σ weightᵢ·((nᵢ − draftedᵢ) ÷ draftedᵢ)². Exact, by dynamic programming over the total. Of
 * equal costs the one that changes fewest items, then the one that changes the earliest, then
 * the one that is shorter earlier. Cost: items × total × spread of the bounds.
 *
 * @param total whole eights to fill
 */
export function fitLengths(items: readonly FitItem[], total: number): FitResult {
  const bounded = items.map((item) => ({ ...item, most: Math.min(item.most, Math.floor(total / item.rounds)) }))
  const table = fillTable(bounded, total)
  if (!Number.isInteger(total) || total < 0 || table[0]![total] === undefined) return { ok: false, nearest: nearestTotals(items, total) }
  const lengths: number[] = []
  let rest = total
  for (const [i, item] of bounded.entries()) {
    const { length } = table[i]![rest]!
    lengths.push(length)
    rest -= item.rounds * length
  }
  return { ok: true, fitted: { lengths, cost: items.reduce((sum, item, i) => sum + costOf(item, lengths[i]!), 0) } }
}

/** table[i][t]: the best lengths of items i… that come to exactly t; undefined where none do. */
function fillTable(items: readonly FitItem[], total: number): (Best | undefined)[][] {
  const end: (Best | undefined)[] = [{ cost: 0, changed: 0, mask: 0n, length: 0 }]
  const table: (Best | undefined)[][] = [...items.map(() => []), end]
  for (let i = items.length - 1; i >= 0; i--) {
    const item = items[i]!
    const bit = 1n << BigInt(items.length - 1 - i)
    const step = item.step ?? 1
    for (let length = firstOf(item); length <= item.most; length += step) {
      const own = costOf(item, length)
      const changes = length !== item.drafted
      for (let t = item.rounds * length; t <= total; t++) {
        const after = table[i + 1]![t - item.rounds * length]
        if (after === undefined) continue
        const cost = own + after.cost
        const changed = after.changed + (changes ? 1 : 0)
        const mask = changes ? after.mask | bit : after.mask
        const held = table[i]![t]
        if (held === undefined || precedes(cost, changed, mask, held)) table[i]![t] = { cost, changed, mask, length }
      }
    }
  }
  return table
}

/** The least length an item may have. */
const firstOf = ({ least, step = 1 }: FitItem): number => Math.ceil(least / step) * step

/** Strictly better by cost, then fewer changes, then earlier ones; equal ones keep the shorter length tried first. */
function precedes(cost: number, changed: number, mask: bigint, held: Best): boolean {
  if (Math.abs(cost - held.cost) > SAME * Math.max(1, cost)) return cost < held.cost
  if (changed !== held.changed) return changed < held.changed
  return mask > held.mask
}

/** The totals next to one that cannot be reached. */
function nearestTotals(items: readonly FitItem[], total: number): Nearest {
  const low = items.reduce((sum, item) => sum + item.rounds * firstOf(item), 0)
  // Past the total by one item's rounds at the most there is another, up to the sum of the bounds.
  const most = items.reduce((sum, { rounds, most: top }) => sum + rounds * top, 0)
  const limit = Math.min(
    most,
    Math.max(low, Math.ceil(total) + items.reduce((widest, { rounds, step = 1 }) => Math.max(widest, rounds * step), 1)),
  )
  let reached = new Set([0])
  for (const item of items) {
    const { rounds, most: top, step = 1 } = item
    const next = new Set<number>()
    for (const sum of reached) for (let n = firstOf(item); n <= top && sum + rounds * n <= limit; n += step) next.add(sum + rounds * n)
    reached = next
  }
  let below: number | null = null
  let above: number | null = null
  for (const sum of reached) {
    if (sum < total && (below === null || sum > below)) below = sum
    if (sum > total && (above === null || sum < above)) above = sum
  }
  return { below, above }
}
