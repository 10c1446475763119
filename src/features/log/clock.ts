import type { Day } from '#units/day.ts'

const two = (value: number): string => String(value).padStart(2, '0')

/** The day of an instant by the clock on this machine. */
export function dayAt(instant: number): Day {
  const date = new Date(instant)
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`
}

/** The time of day of an instant by the clock on this machine: "18:34". */
export function clockAt(instant: number): string {
  const date = new Date(instant)
  return `${two(date.getHours())}:${two(date.getMinutes())}`
}

/** "Wednesday, 25 November 2026" */
export const dayWords = (day: Day): string =>
  new Intl.DateTimeFormat('en-GB', { dateStyle: 'full', timeZone: 'UTC' }).format(new Date(`${day}T00:00:00Z`))
