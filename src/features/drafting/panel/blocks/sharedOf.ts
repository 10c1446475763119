import { sameValue } from '#plan/edits.ts'

/** What all of them say, or null where they differ or there are none. */
export function sharedOf<Thing, Value>(things: readonly Thing[], read: (thing: Thing) => Value): Value | null {
  const [first, ...rest] = things.map(read)
  if (first === undefined) return null
  return rest.every((value) => sameValue(value, first)) ? first : null
}

/** Whether some of them say one thing and some another; that none says anything is no difference. */
export function differ<Thing>(things: readonly Thing[], read: (thing: Thing) => unknown): boolean {
  const [first, ...rest] = things.map(read)
  return rest.some((value) => !sameValue(value, first))
}
