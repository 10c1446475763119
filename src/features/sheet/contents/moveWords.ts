import type { Move } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'

/** A move as it is called: "travel-back on 4, left first". Nothing where the block's own name says as much. */
export function moveWords(move: Move, name: string): string | undefined {
  const side = move.side ? `${move.side}${move.then === 'alternate' ? ' first' : ''}` : undefined
  const saysMove = name.toLowerCase().includes(move.name.toLowerCase()) && name.includes(formatNumber(move.counts))
  if (saysMove) return side
  const words = `${move.name} on ${formatNumber(move.counts)}`
  return side ? `${words}, ${side}` : words
}
