import type { Plan } from '#engine/leading/led.ts'
import type { Seconds } from '#units/units.ts'
import { songSecondAtOne } from './songsOf.ts'

/** A place of a ride that stays the same while the ride around it is changed. */
type RidePlace =
  /** A second of a song's file; of the section itself where it has no song. */
  | { kind: 'section'; sectionId: string; songSecond: Seconds }
  /** Before the first section, on the ride's clock. */
  | { kind: 'before'; at: Seconds }
  /** After the last section, since its end. */
  | { kind: 'after'; since: Seconds }

/** What is heard at a moment of the ride clock. */
export function placeAt({ ride, report }: Plan, at: Seconds): RidePlace {
  const index = report.sections.findIndex(({ to }) => at < to)
  if (index < 0) return { kind: 'after', since: at - (report.sections.at(-1)?.to ?? 0) }
  const { from, one, sectionId } = report.sections[index]!
  if (at < from) return { kind: 'before', at }
  return { kind: 'section', sectionId, songSecond: at - one + songSecondAtOne(ride.sections[index]!) }
}

/**
 * When that is heard in the ride as it is now: within its section, whatever has become of it.
 *
 * @param before the moment it was heard at; it stays where the section is gone, inside the ride
 */
export function timeOf({ ride, report }: Plan, place: RidePlace, before: Seconds): Seconds {
  const inside = (at: Seconds, from: Seconds, to: Seconds) => Math.max(from, Math.min(at, to))
  const { total } = report.overall
  if (place.kind === 'before') return inside(place.at, 0, report.sections[0]?.from ?? total)
  if (place.kind === 'after') return inside((report.sections.at(-1)?.to ?? 0) + place.since, 0, total)
  const index = ride.sections.findIndex(({ id }) => id === place.sectionId)
  const placed = report.sections[index]
  if (!placed) return inside(before, 0, total)
  return inside(placed.one + place.songSecond - songSecondAtOne(ride.sections[index]!), placed.from, placed.to)
}
