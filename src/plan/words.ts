import { isSet, type Length, type Ride } from '#plan/model.ts'
import { joinWords, nameOfItem } from '#plan/names.ts'
import { findBlock, findItem } from '#plan/places.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEights } from '#units/formatEights.ts'
import { plural } from '#units/plural.ts'
import type { Counts } from '#units/units.ts'

/** A length as it is said: "4 eights", "2 sixes", "45 s". */
export const sayLength = (length: Length, eight: Counts): string =>
  'counts' in length ? formatEights(length.counts, eight) : formatDuration(length.seconds)

/** The names of up to three items, or how many there are: "push and recover", "5 blocks". */
export function sayItems(ride: Ride, ids: readonly string[]): string {
  const items = ids.flatMap((id) => findItem(ride, id)?.item ?? findBlock(ride, id)?.block ?? [])
  if (items.length === 0) return 'nothing'
  if (items.length <= 3) return joinWords(items.map(nameOfItem))
  return plural(items.length, items.some(isSet) ? 'item' : 'block')
}
