import type { RideReport } from '#engine/report.ts'
import { beginOf } from '#engine/timeline/beginOf.ts'
import { writeCalendar } from '#formats/icalendar/writeCalendar.ts'
import type { Ride } from '#plan/model.ts'
import { nameOfSection } from '#plan/names.ts'
import { formatClock } from '#units/formatClock.ts'
import { isolated } from '#units/isolated.ts'

/** When a class is held and when its entry is written. */
interface ClassDay {
  /** "2026-11-25" */
  day: string
  /** "18:30" */
  startsAt: string
  /** Milliseconds since 1970. */
  now: number
}

/** A calendar entry of one class: the slot, where it is held, and the sections with their times. */
export function calendarOf(ride: Ride, report: RideReport, { day, startsAt, now }: ClassDay): string {
  const sections = report.sections.map(
    (section, index) => `${formatClock(beginOf(section))} ${isolated(nameOfSection(ride, ride.sections[index]!))}`,
  )
  return writeCalendar({
    uid: `${ride.id}.${day}@ridewright`,
    stamp: new Date(now).toISOString(),
    start: `${day}T${startsAt}:00`,
    minutes: ride.slotMinutes,
    summary: isolated(ride.title) || 'untitled ride',
    description: [
      ...(ride.aim ? [isolated(ride.aim)] : []),
      ride.leaders.map(({ name }) => isolated(name)).join(' and '),
      ...sections,
    ].join('\n'),
    location: ride.location,
  })
}
