import { formatBytes } from '#units/formatBytes.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEffort } from '#units/formatEffort.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { formatSetting, formatSignedSetting } from '#units/formatSetting.ts'
import type { Effort, KnobSteps, Seconds } from '#units/units.ts'
import { locale, ofLocale, usMeasures } from './locale.ts'

/*
 * Values as they stand in a text of any language: numbers, lists, days, and measures in the
 * locale. Forms with words in them stand in each language's `measures.ts`.
 */

/** A plain number, at most `decimals` places, no trailing zeros, a true minus: "127.6", in German "127,6". */
export const number = (value: number, decimals = 2): string => pointed(formatNumber(value, decimals))

/** A large whole number in groups: "12,500", in German "12.500". */
export const grouped = (value: number): string =>
  ofLocale('grouped', (tag) => new Intl.NumberFormat(tag, { maximumFractionDigits: 0 })).format(value)

/** A share from 0 to 1: "86%", in German "86 %". */
export const percent = (share: number, decimals = 0): string =>
  ofLocale(`percent ${decimals}`, (tag) => new Intl.NumberFormat(tag, { style: 'percent', maximumFractionDigits: decimals })).format(share)

/** "24 s" under a minute, "3:51" from a minute on. */
export const duration = (seconds: Seconds): string => formatDuration(seconds)

/** "3:51" always. */
export const clock = (seconds: Seconds): string => formatClock(seconds)

/** A level of effort: "7½". */
export const effort = (level: Effort): string => pointed(formatEffort(level))

/** An effort held or ramped: "7", "4–9½". */
export const effortRange = ({ from, to }: { from: Effort; to: Effort }): string =>
  from === to ? effort(from) : `${effort(from)}–${effort(to)}`

/** The whole level nearest to an effort, for words by level. */
export const nearestLevel = (level: Effort): number => Math.min(10, Math.max(0, Math.round(level)))

/** Knob steps in the bike's own unit: "1½", "1.3". */
export const setting = (steps: KnobSteps, stepsPerUnit: number): string => pointed(formatSetting(steps, stepsPerUnit))

/** The same with its sign: "+¾". */
export const signedSetting = (steps: KnobSteps, stepsPerUnit: number): string => pointed(formatSignedSetting(steps, stepsPerUnit))

/** A file's size: "640 kB". */
export const bytes = (size: number): string => pointed(formatBytes(size))

/** The word for so many: `one` or `other` (CLDR plural rules). */
export function chosen(count: number, words: PluralWords): string {
  const rule = ofLocale('plurals', (tag) => new Intl.PluralRules(tag)).select(count)
  return words[rule === 'one' ? 'one' : 'other']
}

/** A count with its noun: "1 song", "3 songs". */
export const plural = (count: number, one: string, other: string): string => `${number(count)} ${chosen(count, { one, other })}`

export interface PluralWords {
  readonly one: string
  readonly other: string
}

/** "a", "a and b", "a, b, and c". */
export const and = (items: readonly string[]): string =>
  ofLocale('and', (tag) => new Intl.ListFormat(tag, { type: 'conjunction' })).format(items)

/** "a", "a or b", "a, b, or c". */
export const or = (items: readonly string[]): string =>
  ofLocale('or', (tag) => new Intl.ListFormat(tag, { type: 'disjunction' })).format(items)

/** A moment, written by the platform's own pattern for a day, a time, or both; in the time zone of the device unless told. */
export const moment = (at: number | Date, options: Intl.DateTimeFormatOptions): string =>
  ofLocale(JSON.stringify(options), (tag) => new Intl.DateTimeFormat(tag, options)).format(at)

/** A day of the calendar, "2026-11-28": "November 28, 2026", or by another pattern. */
export const day = (iso: string, options: Intl.DateTimeFormatOptions = { dateStyle: 'long' }): string =>
  moment(new Date(`${iso}T00:00:00Z`), { ...options, timeZone: 'UTC' })

/** A day of the week by its number, Monday 0: "Wednesday". */
export const weekday = (number: number): string => moment(Date.UTC(1970, 0, 5 + number), { weekday: 'long', timeZone: 'UTC' })

/** The day of the week on which a calendar begins here, Monday 0. */
export const firstWeekday = (): number => ofLocale('first weekday', (tag) => firstDayOf(new Intl.Locale(tag)))

/** So long ago: "12 minutes ago", "yesterday". */
export const ago = (amount: number, unit: 'minute' | 'hour' | 'day'): string =>
  ofLocale('ago', (tag) => new Intl.RelativeTimeFormat(tag, { numeric: 'auto' })).format(-amount, unit)

/** A time of day, "18:30": "6:30 PM", in German "18:30". */
export const wallClock = (time: string): string => moment(new Date(`1970-01-01T${time}:00Z`), { timeStyle: 'short', timeZone: 'UTC' })

/** A distance to read from: "70 cm", in the US "28 in". */
export const readingDistance = (meters: number): string =>
  usMeasures ? `${number(meters * INCHES, 0)} in` : `${number(meters * 100, 0)} cm`

/** Pounds in a kilogram: 1 lb is 0.45359237 kg exactly (NIST SP 811, appendix B). */
export const POUNDS = 1 / 0.453_592_37
/** Inches in a meter: 1 in is 0.0254 m exactly (NIST SP 811, appendix B). */
const INCHES = 1 / 0.0254

/** With the locale's decimal mark instead of the point. */
function pointed(text: string): string {
  const mark = ofLocale(
    'point',
    (tag) => new Intl.NumberFormat(tag).formatToParts(1.5).find(({ type }) => type === 'decimal')?.value ?? '.',
  )
  return mark === '.' ? text : text.replaceAll('.', mark)
}

/** A word at the head of a sentence or a cell. */
export const capitalized = (text: string): string => text.slice(0, 1).toLocaleUpperCase(locale) + text.slice(1)

/** What platforms know of a locale's week: a property in older ones, a call in newer ones, nothing in some. 1 is Monday, 7 Sunday. */
interface WeekLocale extends Intl.Locale {
  readonly weekInfo?: { readonly firstDay: number }
  getWeekInfo?(): { readonly firstDay: number }
}

/** Monday 0 to Sunday 6; where the platform says nothing, Sunday in the US and Monday elsewhere (CLDR 47, week data). */
const firstDayOf = (own: WeekLocale): number =>
  (own.getWeekInfo?.() ?? own.weekInfo ?? { firstDay: own.maximize().region === 'US' ? 7 : 1 }).firstDay - 1
