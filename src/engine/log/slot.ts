import type { TaughtClass } from '#plan/kept/taught.ts'
import { weekdayOf } from '#units/day.ts'
import { say, type Text } from '#words/said.ts'

/** A place in the week where the same people come: weekday, booked time and room. */
export interface Slot {
  key: string
  /** "Wednesday 6:30 PM, Studio B" */
  name: Text
}

export function slotOf({ day, bookedAt, room }: Pick<TaughtClass, 'day' | 'bookedAt' | 'room'>): Slot {
  const [weekday, time] = [weekdayOf(day), bookedAt ?? '']
  return {
    key: [weekday, time, room.trim().toLowerCase()].join('|'),
    name: say('names.timeSlot', { day: weekday, time, room: room.trim() }),
  }
}

/** An entry whose plan does not say the room, with the room in which its weekday and time were last taught, if they were. */
export function inUsualRoom(entry: TaughtClass, log: readonly TaughtClass[]): TaughtClass {
  if (entry.room.trim() !== '') return entry
  const hour = slotOf({ ...entry, room: '' }).key
  const [last] = log
    .filter((taught) => slotOf({ ...taught, room: '' }).key === hour)
    .toSorted((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0))
  return { ...entry, room: last?.room ?? '' }
}

/** The classes of a slot before a day, newest first. */
export const classesInSlot = (log: readonly TaughtClass[], key: string, before: string): TaughtClass[] =>
  log.filter((taught) => taught.day < before && slotOf(taught).key === key).toSorted((a, b) => (a.day < b.day ? 1 : -1))
