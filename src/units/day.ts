/** A day of the calendar as "2026-11-25". */
export type Day = string

const FORM = /^(\d{4})-(\d{2})-(\d{2})$/
/** 1 January 1970 was a Thursday; weekdays are counted from Monday. */
const THURSDAY = 3

/**
 * Days since 1 January 1970 in the proleptic Gregorian calendar, before it negative. Exact
 * arithmetic on whole eras of 400 years (146,097 days); no clock and no time zone.
 *
 * @returns NaN for what is no day, also for 30 February
 */
export function dayNumber(day: Day): number {
  const [, y, m, d] = FORM.exec(day) ?? []
  if (d === undefined) return Number.NaN
  const [year, month, date] = [Number(y), Number(m), Number(d)]
  if (month < 1 || month > 12 || date < 1 || date > 31) return Number.NaN
  // Years begin in March, so that the leap day is their last.
  const ofMarch = month > 2 ? year : year - 1
  const era = Math.floor(ofMarch / 400)
  const ofEra = ofMarch - era * 400
  const ofYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + date - 1
  const number = era * 146_097 + ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + ofYear - 719_468
  return dayOfNumber(number) === day ? number : Number.NaN
}

/** The day so many days after 1 January 1970. */
function dayOfNumber(number: number): Day {
  const shifted = number + 719_468
  const era = Math.floor(shifted / 146_097)
  const ofEra = shifted - era * 146_097
  const year = Math.floor((ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) / 365)
  const ofYear = ofEra - (365 * year + Math.floor(year / 4) - Math.floor(year / 100))
  const part = Math.floor((5 * ofYear + 2) / 153)
  const date = ofYear - Math.floor((153 * part + 2) / 5) + 1
  const month = part < 10 ? part + 3 : part - 9
  const two = (value: number) => String(value).padStart(2, '0')
  return `${String(year + era * 400 + (month <= 2 ? 1 : 0)).padStart(4, '0')}-${two(month)}-${two(date)}`
}

export const isDay = (text: string): boolean => !Number.isNaN(dayNumber(text))

/** 0 for Monday to 6 for Sunday. */
export const weekdayOf = (day: Day): number => (((dayNumber(day) + THURSDAY) % 7) + 7) % 7

/** The day so many days later. */
export const daysAfter = (day: Day, days: number): Day => dayOfNumber(dayNumber(day) + days)

/** The first day of a day's week, where weeks begin on a weekday: Monday (0) unless told. */
export const startOfWeek = (day: Day, first = 0): Day => daysAfter(day, -((weekdayOf(day) - first + 7) % 7))
