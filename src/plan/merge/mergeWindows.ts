import { sameValue } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'
import type { Choices } from './difference.ts'
import { keepIdentity } from './keepIdentity.ts'
import { type Merge, mergeRides } from './mergeRides.ts'

/**
 * Brings two states of one person's ride together, as two windows hold it or as an undo meets
 * what came in since. As `mergeRides`, with what belongs to the keeper merged as well.
 *
 * @param base what both were made from
 * @param mine stands where both changed the same value
 */
export function mergeWindows(base: Ride, mine: Ride, theirs: Ride, choices: Choices = {}): Merge {
  const alone = (merged: Ride): Merge => ({ merged, based: true, taken: [], own: [], alike: [], conflicts: [] })
  if (sameValue(base, theirs) || sameValue(mine, theirs)) return alone(mine)
  if (sameValue(base, mine)) return alone(keepIdentity(mine, theirs))
  return mergeRides(base, mine, theirs, choices, 'one person')
}
