import type { Move } from '#plan/model.ts'
import { number } from '#words/forms.ts'
import { words } from '#words/words.ts'

/** A move as it is called: "travel-back on 4, left first". Nothing where the block's own name says as much. */
export function moveWords(move: Move, name: string): string | undefined {
  const side = move.side && words.printed.side({ side: move.side, first: move.then === 'alternate' })
  const saysMove = name.toLowerCase().includes(move.name.toLowerCase()) && name.includes(number(move.counts))
  if (saysMove) return side
  const called = words.printed.move(move)
  return side ? `${called}, ${side}` : called
}
