import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatEightsInput } from '#units/formatEights.ts'
import { parseEights } from '#units/parseEights.ts'
import { measures } from '#words/en/measures.ts'

describe('a length in counts', () => {
  it.each([
    [64, 8, '8 eights'],
    [8, 8, '1 eight'],
    [68, 8, '8 eights + 4'],
    [4, 8, '4 counts'],
    [1, 8, '1 count'],
    [48, 6, '8 sixes'],
    [6, 6, '1 six'],
  ])('%d counts in units of %d are %s', (counts, unit, text) => {
    expect(measures.eights(counts, unit)).toBe(text)
  })
})

describe('parseEights', () => {
  it.each([
    ['8', 8, 64],
    ['8 eights', 8, 64],
    ['8+4', 8, 68],
    ['8 eights + 4', 8, 68],
    ['8 eights + 4 counts', 8, 68],
    ['36 counts', 8, 36],
    ['36 Zählzeiten', 8, 36],
    ['8 Achter + 4', 8, 68],
    ['2 Phrasen', 8, 64],
    ['8 Sechser', 6, 48],
    ['36c', 8, 36],
    ['2 phrases', 8, 64],
    ['8½', 8, 68],
    ['½', 8, 4],
    ['0+4', 8, 4],
    ['8 × 8', 8, 64],
    ['8', 6, 48],
    ['2 phrases', 6, 48],
    ['8 sixes + 3', 6, 51],
  ])('reads %s in units of %d as %d counts', (text, unit, counts) => {
    expect(parseEights(text, unit)).toEqual({ ok: true, value: counts })
  })

  it.each([
    ['', { kind: 'notEights', unit: 8 }],
    ['long', { kind: 'notEights', unit: 8 }],
    ['-8', { kind: 'notEights', unit: 8 }],
    ['0', { kind: 'noCount' }],
    ['1.3', { kind: 'partOfCount', below: 10, above: 11, unit: 8 }],
  ])('refuses %s', (text, problem) => {
    expect(parseEights(text)).toEqual({ ok: false, problem })
  })

  it('reads back every length it writes, in either form', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), fc.constantFrom(6, 8), (counts, unit) => {
        expect(parseEights(formatEightsInput(counts, unit), unit)).toEqual({ ok: true, value: counts })
        expect(parseEights(measures.eights(counts, unit), unit)).toEqual({ ok: true, value: counts })
      }),
    )
  })
})
