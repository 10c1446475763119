import type { Day } from '#units/day.ts'
import { words } from '#words/words.ts'

const two = (value: number): string => String(value).padStart(2, '0')

/** The day of an instant by the clock on this device. */
export function dayAt(instant: number): Day {
  const date = new Date(instant)
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`
}

/** The time of day of an instant by the clock on this device: "18:34". */
export function clockAt(instant: number): string {
  const date = new Date(instant)
  return `${two(date.getHours())}:${two(date.getMinutes())}`
}

/** "Wednesday, November 25, 2026" */
export const dayWords = (day: Day): string => words.log.day(day)
