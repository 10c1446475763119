import type { TaughtClass } from '#plan/taught.ts'
import { WEEKDAYS, weekdayOf } from '#units/day.ts'

/** A place in the week where the same people come: weekday, booked time and room. */
export interface Slot {
  key: string
  /** "Wednesday 18:30, Lanternfish, main room" */
  name: string
}

export function slotOf({ day, bookedAt, room }: Pick<TaughtClass, 'day' | 'bookedAt' | 'room'>): Slot {
  const time = [WEEKDAYS[weekdayOf(day)]!, ...(bookedAt ? [bookedAt] : [])].join(' ')
  return {
    key: [weekdayOf(day), bookedAt ?? '', room.trim().toLowerCase()].join('|'),
    name: room.trim() === '' ? time : `${time}, ${room.trim()}`,
  }
}

/** The classes of a slot before a day, newest first. */
export const classesInSlot = (log: readonly TaughtClass[], key: string, before: string): TaughtClass[] =>
  log.filter((taught) => taught.day < before && slotOf(taught).key === key).toSorted((a, b) => (a.day < b.day ? 1 : -1))
