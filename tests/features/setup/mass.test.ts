import fc from 'fast-check'
import { afterEach, describe, expect, it } from 'vitest'
import { formatMass, massUnit, parseMass } from '#features/setup/riders/mass.ts'
import { en } from '#words/en/index.ts'
import { setWords } from '#words/words.ts'

const inLocale = (locale: string) => setWords('en', en, locale)
afterEach(() => inLocale('en-US'))

describe('a rider’s mass', () => {
  it.each([
    ['en-US', '154', 69.853],
    ['en-US', '154 lb', 69.853],
    ['en-US', '154.5 lbs', 70.08],
    ['en-US', '70 kg', 70],
    ['en-US', '70,5kg', 70.5],
    ['en-GB', '70', 70],
    ['en-GB', '154 pounds', 69.853],
    ['de-DE', '70,5', 70.5],
    ['de-DE', '154 lb', 69.853],
  ])('in %s is read from “%s”', (locale, text, kilograms) => {
    inLocale(locale)
    expect(parseMass(text)).toEqual({ ok: true, value: kilograms })
  })

  it.each([
    ['en-US', 'light', { kind: 'notNumber', of: 'mass' }],
    ['en-US', '66', { kind: 'outside', of: 'mass', min: 67, max: 440 }],
    ['en-US', '29 kg', { kind: 'outside', of: 'mass', min: 67, max: 440 }],
    ['de-DE', '201', { kind: 'outside', of: 'mass', min: 30, max: 200 }],
    ['en-US', '154.55', { kind: 'tooFine', of: 'mass', decimals: 1 }],
  ])('in %s is not read from “%s”', (locale, text, problem) => {
    inLocale(locale)
    expect(parseMass(text)).toEqual({ ok: false, problem })
  })

  it('takes the bounds it names', () => {
    for (const text of ['67', '440', '30 kg', '200 kg']) expect(parseMass(text).ok, text).toBe(true)
  })

  it('stands as it was typed, and does not drift when it is read and written again', () => {
    const tenths = fc.integer({ min: 670, max: 1_990 }).map((value) => value / 10)
    fc.assert(
      fc.property(fc.constantFrom('en-US', 'en-GB', 'de-DE'), tenths, (locale, typed) => {
        inLocale(locale)
        const first = parseMass(`${typed} ${massUnit()}`)
        if (!first.ok) throw new Error('refused')
        expect(Number(formatMass(first.value).replace(',', '.'))).toBe(typed)
        expect(parseMass(formatMass(first.value))).toEqual(first)
      }),
    )
  })
})
