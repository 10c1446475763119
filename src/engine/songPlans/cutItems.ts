import { firstHalf, secondHalf } from '#plan/halves.ts'
import { type Block, type Item, isSet } from '#plan/model.ts'
import { playedOut } from '#plan/playedOut.ts'
import { amountOf } from '#plan/remeasure.ts'

interface Cut {
  items: readonly Item[]
  /** What comes before the cut, in the order it was ridden: where riders stand at the cut follows from its calls. */
  before: readonly Item[]
}

/** Counts or seconds an item plays, all rounds of a set among them. */
const playedAmount = (item: Item): number =>
  isSet(item) ? item.rounds * item.parts.reduce((sum, part) => sum + amountOf(part.length), 0) : amountOf(item.length)

/** Counts or seconds that items play. */
export const playedIn = (items: readonly Item[]): number => items.reduce((sum, item) => sum + playedAmount(item), 0)

/**
 * What items play from one count (or second) to another. What lies whole inside is the very object; a block that
 * lies across an end is cut there, its last piece to whole units of it, and a set across one is played out first.
 *
 * @param unit counts of an eight, or one second: a piece at the end that is shorter is left out
 */
export function cutItems(items: readonly Item[], { from, to, unit }: { from: number; to: number; unit: number }): Cut {
  const kept: Item[] = []
  const before: Item[] = []
  let at = 0
  const take = (item: Item): void => {
    const [start, end] = [at, at + playedAmount(item)]
    if (start >= from && end <= to) kept.push(item)
    else if (end <= from) before.push(item)
    else if (start < to) {
      if (isSet(item)) {
        for (const block of playedOut(item).flat()) take(block)
        return
      }
      const piece = pieceOf(item, Math.max(0, from - start), Math.min(end, to) - start, unit)
      before.push(...piece.before)
      kept.push(...piece.kept)
    }
    at = end
  }
  for (const item of items) take(item)
  return { items: kept, before }
}

/** A block from one place inside it to another. */
function pieceOf(block: Block, from: number, to: number, unit: number): { kept: Block[]; before: Block[] } {
  const rest = from > 0 ? secondHalf(block, from, block.id) : block
  const before = from > 0 ? [firstHalf(block, from)] : []
  const whole = amountOf(rest.length)
  if (to - from >= whole) return { kept: [rest], before }
  const length = Math.floor((to - from) / unit) * unit
  return { kept: length > 0 ? [firstHalf(rest, length)] : [], before }
}
