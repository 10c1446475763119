import { mapSame, sameValue } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'

/** The same ride with every section and item that says what it said before as the very object it was. */
export function keepIdentity(before: Ride, after: Ride): Ride {
  if (sameValue(before, after)) return before
  const sections = new Map(before.sections.map((section) => [section.id, section]))
  const items = new Map(before.sections.flatMap(({ blocks }) => blocks).map((item) => [item.id, item]))
  const same = <T>(old: T | undefined, now: T): T => (old !== undefined && sameValue(old, now) ? old : now)
  return {
    ...after,
    sections: mapSame(after.sections, (section) =>
      same(sections.get(section.id), { ...section, blocks: section.blocks.map((item) => same(items.get(item.id), item)) }),
    ),
  }
}
