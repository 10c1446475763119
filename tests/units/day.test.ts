import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dayNumber, daysAfter, isDay, startOfWeek, weekdayOf } from '#units/day.ts'

describe('days without a clock', () => {
  test.each([
    ['1970-01-01', 0],
    ['1969-12-31', -1],
    ['2000-02-29', 11_016],
    ['2026-11-25', 20_782],
  ])('%s is day %d', (day, number) => {
    expect(dayNumber(day)).toBe(number)
    expect(daysAfter('1970-01-01', number)).toBe(day)
  })

  test('agree with the platform’s own calendar over eight centuries', () => {
    fc.assert(
      fc.property(fc.integer({ min: -146_097, max: 146_097 }), (number) => {
        const platform = new Date(number * 86_400_000)
        const day = daysAfter('1970-01-01', number)
        expect(day).toBe(platform.toISOString().slice(0, 10))
        expect(dayNumber(day)).toBe(number)
        expect(weekdayOf(day)).toBe((platform.getUTCDay() + 6) % 7)
      }),
    )
  })

  test.each(['2026-02-29', '2026-13-01', '2026-00-10', '26-1-1', 'today', '2026-11-31'])('%s is none', (text) =>
    expect(isDay(text)).toBe(false),
  )

  test('weeks start on Monday', () => {
    expect(startOfWeek('2026-11-25')).toBe('2026-11-23')
    expect(startOfWeek('2026-11-23')).toBe('2026-11-23')
    expect(startOfWeek('2026-11-29')).toBe('2026-11-23')
    expect([startOfWeek('2026-11-28', 6), startOfWeek('2026-11-29', 6)]).toEqual(['2026-11-22', '2026-11-29'])
    expect(daysAfter('2026-12-31', 1)).toBe('2027-01-01')
  })
})
