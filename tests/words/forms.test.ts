import { afterEach, describe, expect, it } from 'vitest'
import * as forms from '#words/forms.ts'
import { setLocale } from '#words/locale.ts'

afterEach(() => setLocale('en-US'))

const both = <T>(form: () => T): { us: T; german: T } => {
  setLocale('en-US')
  const us = form()
  setLocale('de-DE')
  return { us, german: form() }
}

describe('values in a text', () => {
  it('have the decimal mark, the percent and the groups of the locale, and a true minus', () => {
    expect(both(() => forms.number(-127.6))).toEqual({ us: '−127.6', german: '−127,6' })
    expect(both(() => forms.percent(0.86))).toEqual({ us: '86%', german: '86\u00a0%' })
    expect(both(() => forms.grouped(12500))).toEqual({ us: '12,500', german: '12.500' })
    expect(both(() => forms.setting(13, 10))).toEqual({ us: '1.3', german: '1,3' })
    expect(both(() => forms.bytes(8_200_000))).toEqual({ us: '8.2 MB', german: '8,2 MB' })
  })

  it('keep the points of times and the fractions of a knob', () => {
    expect(both(() => forms.clock(231))).toEqual({ us: '3:51', german: '3:51' })
    expect(both(() => forms.setting(6, 4))).toEqual({ us: '1½', german: '1½' })
  })

  it('are listed as the language lists', () => {
    expect(both(() => forms.and(['a', 'b', 'c']))).toEqual({ us: 'a, b, and c', german: 'a, b und c' })
    expect(both(() => forms.or(['a', 'b']))).toEqual({ us: 'a or b', german: 'a oder b' })
  })

  it('have the day and the time of day of the country', () => {
    expect(both(() => forms.day('2026-11-28'))).toEqual({ us: 'November 28, 2026', german: '28. November 2026' })
    expect(both(() => forms.wallClock('18:30').replace(/\s/g, ' '))).toEqual({ us: '6:30 PM', german: '18:30' })
    expect(both(() => forms.wallClock('00:05').replace(/\s/g, ' '))).toEqual({ us: '12:05 AM', german: '00:05' })
  })

  // 1 lb is 0.45359237 kg, 1 in is 0.0254 m: NIST SP 811, appendix B. 70 kg are 154.324 lb.
  it('have the measures of the country', () => {
    expect(both(() => forms.readingDistance(0.7))).toEqual({ us: '28 in', german: '70 cm' })
  })

  it('come in one and in many', () => {
    expect([0, 1, 2].map((count) => forms.plural(count, 'song', 'songs'))).toEqual(['0 songs', '1 song', '2 songs'])
  })

  it('fall back to American English where the platform does not know the locale', () => {
    setLocale('xx-invalid-yy')
    expect(forms.number(1.5)).toBe('1.5')
  })
})
