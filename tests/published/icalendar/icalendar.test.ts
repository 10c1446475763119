import fc from 'fast-check'
import ICAL from 'ical.js'
import { describe, expect, test } from 'vitest'
import { escapeText, foldLine } from '#formats/icalendar/contentLine.ts'
import { writeCalendar } from '#formats/icalendar/writeCalendar.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

const octets = (text: string) => new TextEncoder().encode(text).length

checkRows('iCalendar', rows, {
  'ical.fold': () => Math.max(...foldLine('a'.repeat(1000)).split('\r\n').map(octets)),
  'ical.esc': ({ text }: { text: string }) => escapeText(text),
})

describe('folding (RFC 5545, section 3.1)', () => {
  test('keeps every line to 75 octets and every character whole', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
        const folded = foldLine(text)
        for (const line of folded.split('\r\n')) expect(octets(line)).toBeLessThanOrEqual(75)
        expect(folded.replaceAll('\r\n ', '')).toBe(text)
        expect(new TextDecoder('utf-8', { fatal: true }).decode(new TextEncoder().encode(folded))).toBe(folded)
      }),
    )
  })

  test('uses the whole line: 75 octets stay, the 76th goes on', () => {
    expect(foldLine('a'.repeat(75))).not.toContain('\r\n')
    expect(foldLine('a'.repeat(76))).toBe(`${'a'.repeat(75)}\r\n a`)
    expect(foldLine(`${'a'.repeat(74)}é`)).toBe(`${'a'.repeat(74)}\r\n é`)
    // The space a later line begins with counts.
    expect(foldLine('a'.repeat(149))).toBe(`${'a'.repeat(75)}\r\n ${'a'.repeat(74)}`)
    expect(foldLine('a'.repeat(150))).toBe(`${'a'.repeat(75)}\r\n ${'a'.repeat(74)}\r\n a`)
  })

  // The last character of each length in UTF-8 and the first of the next (RFC 3629, section 3).
  test.each([
    ['\u{7f}', 1],
    ['\u{80}', 2],
    ['\u{7ff}', 2],
    ['\u{800}', 3],
    ['\u{ffff}', 3],
    ['\u{10000}', 4],
    ['\u{10ffff}', 4],
  ])('fills it with characters of any length in UTF-8: %j', (character, length) => {
    expect(octets(character)).toBe(length)
    const [whole, rest] = [Math.floor(75 / length), 75 % length]
    const filled = character.repeat(whole) + 'a'.repeat(rest)
    expect(foldLine(filled)).toBe(filled)
    expect(foldLine(`${filled}b`)).toBe(`${filled}\r\n b`)
    expect(foldLine(`${'a'.repeat(rest + 1)}${character.repeat(whole)}`)).toBe(
      `${'a'.repeat(rest + 1)}${character.repeat(whole - 1)}\r\n ${character}`,
    )
  })
})

const entry: Parameters<typeof writeCalendar>[0] = {
  uid: 'spark-2026-11-25@ridewright',
  stamp: '2026-11-24T08:30:00.000Z',
  start: '2026-11-25T12:10:00',
  minutes: 20,
  summary: 'Twenty-Minute Spark; climbs, pushes',
  description: 'Ünïcode “climbs”, a back\\slash, 🚲🚲🚲 and\na second line that is long enough to be folded twice over, once here.',
  location: 'Lanternfish, main room',
}

describe('an entry read back by an independent parser', () => {
  const text = writeCalendar(entry)

  test('has CRLF after every line and none elsewhere', () => {
    expect(text.endsWith('\r\n')).toBe(true)
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
  })

  test('says what was put in', () => {
    const calendar = new ICAL.Component(ICAL.parse(text))
    const event = new ICAL.Event(calendar.getFirstSubcomponent('vevent')!)
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0')
    expect(event.uid).toBe(entry.uid)
    expect(event.summary).toBe(entry.summary)
    expect(event.description).toBe(entry.description)
    expect(event.location).toBe(entry.location)
    expect(event.startDate.toString()).toBe('2026-11-25T12:10:00')
    expect(event.startDate.zone).toBe(ICAL.Timezone.localTimezone)
    expect(event.endDate.toString()).toBe('2026-11-25T12:30:00')
    expect(String(event.component.getFirstPropertyValue('dtstamp'))).toBe('2026-11-24T08:30:00Z')
  })

  test('lasts whole minutes, to the nearest', () => {
    const lasting = (minutes: number) => /^DURATION:(.*)\r$/m.exec(writeCalendar({ ...entry, minutes }))![1]
    expect([44.4, 44.5, 45.4].map(lasting)).toEqual(['PT44M', 'PT45M', 'PT45M'])
  })

  test('has no lines for what is not known', () => {
    const { description: _, location: __, ...bare } = entry
    const lines = writeCalendar(bare).split('\r\n')
    expect(lines.filter((line) => /^(DESCRIPTION|LOCATION)/.test(line))).toEqual([])
    expect(lines).toContain(`SUMMARY:${'Twenty-Minute Spark\\; climbs\\, pushes'}`)
  })

  test('any text comes back', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const summary = text.replace(/\p{Cc}/gu, ' ')
        const calendar = new ICAL.Component(ICAL.parse(writeCalendar({ ...entry, summary: `x${summary}` })))
        expect(new ICAL.Event(calendar.getFirstSubcomponent('vevent')!).summary).toBe(`x${summary}`)
      }),
    )
  })
})
