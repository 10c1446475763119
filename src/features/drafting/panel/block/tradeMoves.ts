import type { Counts } from '#units/units.ts'

/**
 * Moves the trade has a name for, with the counts they usually go on (common practice). One name a
 * move: accents and figures go by it.
 */
export const TRADE_MOVES: readonly { name: string; counts: Counts }[] = [
  { name: 'jump', counts: 8 },
  { name: 'travel-back', counts: 4 },
  { name: 'lean', counts: 8 },
  { name: 'side lean', counts: 4 },
  { name: 'press', counts: 4 },
  { name: 'pulse', counts: 2 },
  { name: 'corner', counts: 8 },
  { name: 'around the clock', counts: 8 },
  { name: 'shoulder rolls', counts: 8 },
  { name: 'stretch', counts: 32 },
]
