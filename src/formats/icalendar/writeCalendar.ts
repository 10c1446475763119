import { escapeText, foldLine } from './contentLine.ts'

/** A class in a calendar. */
interface CalendarEntry {
  /** The same for every export of the same class, so that a calendar replaces it. */
  uid: string
  /** When this was written: UTC as "2026-11-25T08:30:00Z". */
  stamp: string
  /** "2026-11-25T18:30:00", with no zone: the wall clock of wherever the class is. */
  start: string
  minutes: number
  summary: string
  description?: string
  location?: string
}

const PRODUCT = '-//Ridewright//Ridewright//EN'

/**
 * A calendar of one entry. The start floats: a class is at half past six by the clock on the
 * wall, and a calendar shows it so. Its end comes from its length. Source: RFC 5545 (2009).
 */
export function writeCalendar({ uid, stamp, start, minutes, summary, description, location }: CalendarEntry): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:${PRODUCT}`,
    'BEGIN:VEVENT',
    `UID:${escapeText(uid)}`,
    `DTSTAMP:${basic(stamp)}`,
    `DTSTART:${basic(start)}`,
    `DURATION:PT${Math.round(minutes)}M`,
    `SUMMARY:${escapeText(summary)}`,
    ...(description ? [`DESCRIPTION:${escapeText(description)}`] : []),
    ...(location ? [`LOCATION:${escapeText(location)}`] : []),
    'END:VEVENT',
    'END:VCALENDAR',
  ]
  return lines.map((line) => `${foldLine(line)}\r\n`).join('')
}

/** "2026-11-25T18:30:00" → "20261125T183000", a "Z" kept. */
const basic = (instant: string): string => instant.replace(/[-:]|\.\d+/g, '')
