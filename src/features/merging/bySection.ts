import type { Ride } from '#plan/model.ts'
import { sectionName } from '#plan/names.ts'
import { tell, words } from '#words/words.ts'

/** What belongs to one section, or to the ride itself. */
interface SectionGroup<Entry> {
  sectionId: string | undefined
  name: string
  entries: Entry[]
}

/**
 * Entries by section: those of the ride first, then section by section in the order of the
 * first ride that has it; in each in the order of their times, those without one first.
 */
export function bySection<Entry extends { sectionId: string | undefined; at?: number | undefined }>(
  entries: readonly Entry[],
  rides: readonly Ride[],
): SectionGroup<Entry>[] {
  const names = new Map<string | undefined, string>([[undefined, words.merging.wholeRide]])
  for (const ride of rides)
    for (const section of ride.sections) if (!names.has(section.id)) names.set(section.id, tell(sectionName(ride, section)))
  return [...names]
    .map(([sectionId, name]) => ({
      sectionId,
      name,
      entries: entries.filter((entry) => entry.sectionId === sectionId).toSorted((a, b) => (a.at ?? -1) - (b.at ?? -1)),
    }))
    .filter((group) => group.entries.length > 0)
}
