import { sameValue } from '#plan/edits.ts'

/** What all of them say, or null where they differ or there are none. */
export function sharedOf<Thing, Value>(things: readonly Thing[], read: (thing: Thing) => Value): Value | null {
  const [first, ...rest] = things.map(read)
  if (first === undefined) return null
  return rest.every((value) => sameValue(value, first)) ? first : null
}
