import { sameValue } from '#plan/edits.ts'
import type { Origin } from './difference.ts'

/** Who changed a value since the base; `none` where all three say the same. */
export function originOf(base: unknown, mine: unknown, theirs: unknown): Origin | 'none' {
  if (sameValue(mine, theirs)) return sameValue(base, mine) ? 'none' : 'both'
  if (sameValue(base, mine)) return 'theirs'
  return sameValue(base, theirs) ? 'mine' : 'conflict'
}
