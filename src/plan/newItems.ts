import { type Item, isSet, type Ride } from '#plan/model.ts'
import { idsOf } from '#plan/places.ts'

/**
 * Ids of the blocks, sets and parts that a change has made: those the ride after it has and the one before had not,
 * in the order of the ride. A new set counts as one thing, also where the blocks it was made of are old.
 */
export function newItems(before: Ride, after: Ride): string[] {
  const known = new Set(idsOf(before))
  return after.sections.flatMap(({ blocks }) => blocks.flatMap((item) => newIn(item, known)))
}

function newIn(item: Item, known: ReadonlySet<string>): string[] {
  if (!known.has(item.id)) return [item.id]
  return isSet(item) ? item.parts.filter(({ id }) => !known.has(id)).map(({ id }) => id) : []
}
