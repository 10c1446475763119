import type { RideReport } from '#engine/report.ts'
import { beginOf } from '#engine/timeline/beginOf.ts'
import { writeCalendar } from '#formats/icalendar/writeCalendar.ts'
import type { Ride } from '#plan/model.ts'
import { sectionName } from '#plan/names.ts'
import { isolated } from '#units/isolated.ts'
import { and, clock } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

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
    (section, index) => `${clock(beginOf(section))} ${isolated(tell(sectionName(ride, ride.sections[index]!)))}`,
  )
  return writeCalendar({
    uid: `${ride.id}.${day}@ridewright`,
    stamp: new Date(now).toISOString(),
    start: `${day}T${startsAt}:00`,
    minutes: ride.slotMinutes,
    summary: isolated(ride.title) || words.names.untitled,
    description: [...(ride.aim ? [isolated(ride.aim)] : []), and(ride.leaders.map(({ name }) => isolated(name))), ...sections].join('\n'),
    location: ride.location,
  })
}
