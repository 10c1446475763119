import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type BandHeights, packBands } from '#features/sheet/paging/packBands.ts'

const band = (head: number, ...rows: number[]): BandHeights => ({ head, rows })
const whole = (index: number, { rows }: BandHeights) => ({ band: index, from: 0, to: rows.length })

describe('packing bands', () => {
  test('fills a column to its last millimetre, then the next, then the next page', () => {
    const bands = [band(2, 4), band(2, 3), band(2, 5), band(2, 7)]
    expect(packBands(bands, { height: 12, columns: 2, gap: 1 })).toEqual([
      [[whole(0, bands[0]!), whole(1, bands[1]!)], [whole(2, bands[2]!)]],
      [[whole(3, bands[3]!)]],
    ])
  })

  test('takes a new column rather than split a song', () => {
    const bands = [band(1, 5), band(1, 2, 2, 2)]
    expect(packBands(bands, { height: 10, columns: 1, gap: 0 })).toEqual([[[whole(0, bands[0]!)]], [[whole(1, bands[1]!)]]])
  })

  test('splits what no column can hold, with its head in every part', () => {
    expect(packBands([band(2, 3, 3, 3, 3, 3)], { height: 9, columns: 2, gap: 1 })).toEqual([
      [[{ band: 0, from: 0, to: 2 }], [{ band: 0, from: 2, to: 4 }]],
      [[{ band: 0, from: 4, to: 5 }]],
    ])
  })

  test('gives a row higher than a column one of its own', () => {
    expect(packBands([band(1, 2, 20, 2)], { height: 10, columns: 1, gap: 0 })).toEqual([
      [[{ band: 0, from: 0, to: 1 }]],
      [[{ band: 0, from: 1, to: 2 }]],
      [[{ band: 0, from: 2, to: 3 }]],
    ])
  })

  test('counts with the head a band has where it goes on', () => {
    const long = { head: 2, again: 4, rows: [3, 3, 3, 3] }
    expect(packBands([long], { height: 9, columns: 1, gap: 0 })).toEqual([
      [[{ band: 0, from: 0, to: 2 }]],
      [[{ band: 0, from: 2, to: 3 }]],
      [[{ band: 0, from: 3, to: 4 }]],
    ])
  })

  test('no bands, no pages', () => {
    expect(packBands([], { height: 10, columns: 2, gap: 0 })).toEqual([])
  })

  const heights = fc.array(
    fc.record({ head: fc.integer({ min: 1, max: 5 }), rows: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 12 }) }),
    { maxLength: 12 },
  )
  const spaces = fc.record({
    height: fc.integer({ min: 15, max: 60 }),
    columns: fc.integer({ min: 1, max: 4 }),
    gap: fc.integer({ min: 0, max: 3 }),
  })

  test('every row stands once, in order, and nothing is higher than its column', () => {
    fc.assert(
      fc.property(heights, spaces, (bands, space) => {
        const columns = packBands(bands, space).flat()
        const rows = columns
          .flat()
          .flatMap((piece) => bands[piece.band]!.rows.slice(piece.from, piece.to).map((_, i) => `${piece.band}.${piece.from + i}`))
        expect(rows).toEqual(bands.flatMap(({ rows: all }, index) => all.map((_, row) => `${index}.${row}`)))
        for (const pieces of columns) {
          const sizes = pieces.map(
            ({ band: index, from, to }) => bands[index]!.head + bands[index]!.rows.slice(from, to).reduce((a, b) => a + b, 0),
          )
          expect(sizes.reduce((a, b) => a + b, 0) + space.gap * (pieces.length - 1)).toBeLessThanOrEqual(space.height)
        }
      }),
    )
  })

  test('a band is split only where it is higher than a column', () => {
    fc.assert(
      fc.property(heights, spaces, (bands, space) => {
        const pieces = packBands(bands, space).flat(2)
        for (const [index, { head, rows }] of bands.entries()) {
          const size = head + rows.reduce((a, b) => a + b, 0)
          if (size <= space.height) expect(pieces.filter((piece) => piece.band === index)).toHaveLength(1)
        }
      }),
    )
  })
})
