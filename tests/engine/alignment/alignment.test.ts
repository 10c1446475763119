import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { alignChange } from '#engine/alignment/alignChange.ts'
import { snapToEights } from '#engine/alignment/snapToEights.ts'
import { driftSeconds } from '#engine/alignment/tempoError.ts'
import { computeRide } from '#engine/computeRide.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'

const EIGHTS = { eight: 8, phrase: 32, name: 'eight' } as const
const SIXES = { eight: 6, phrase: 24, name: 'six' } as const
/** Half a second a count. */
const grid = gridOfTempo(120)

describe('a change on the music', () => {
  it.each([
    [64, 'phrase', 0, 0],
    [40, 'eight', 0, 8],
    [42, 'count', 2, 10],
    [63, 'count', -1, -1],
    // An eighth of a count is 62 ms, within what the ear lets pass; a quarter is not.
    [64.125, 'phrase', 0.125, 0.125],
    [64.25, 'off', 0.25, 0.25],
    [41.5, 'off', 1.5, 9.5],
  ])('at count %d is on the %s', (count, grade, fromEight, fromPhrase) => {
    const alignment = alignChange(grid, count, EIGHTS)
    expect(alignment.grade).toBe(grade)
    expect(alignment.fromEight).toEqual({ counts: fromEight, milliseconds: fromEight * 500 })
    expect(alignment.fromPhrase).toEqual({ counts: fromPhrase, milliseconds: fromPhrase * 500 })
  })

  it('counts sixes in three', () => {
    expect(alignChange(grid, 24, SIXES).grade).toBe('phrase')
    expect(alignChange(grid, 30, SIXES).grade).toBe('eight')
    expect(alignChange(grid, 32, SIXES).grade).toBe('count')
  })

  it('measures milliseconds on the song as it is', () => {
    const slowing = {
      anchors: [
        [0, 0],
        [32, 16],
        [64, 48],
      ] as [number, number][],
      beatsPerBar: 4 as const,
    }
    expect(alignChange(slowing, 33, EIGHTS).fromPhrase.milliseconds).toBe(1000)
    expect(alignChange(slowing, 31, EIGHTS).fromPhrase.milliseconds).toBe(-500)
  })

  it('is nearest to what a search of all counts finds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 500 }), fc.constantFrom(EIGHTS, SIXES), (count, unit) => {
        const { fromEight, fromPhrase } = alignChange(grid, count, unit)
        const nearest = (step: number) => Math.min(...Array.from({ length: 200 }, (_, i) => Math.abs(count - i * step)))
        expect(Math.abs(fromEight.counts)).toBe(nearest(unit.eight))
        expect(Math.abs(fromPhrase.counts)).toBe(nearest(unit.phrase))
        expect((count - fromEight.counts) % unit.eight).toBe(0)
      }),
    )
  })

  it('is judged by the song, from wherever it is ridden, and shared out over the section', () => {
    const blocks = [
      aBlock('a', { length: { counts: 16 } }),
      aBlock('b', { length: { counts: 12 } }),
      aBlock('c', { length: { counts: 20 } }),
    ]
    const report = computeRide({ ...smallRide(), sections: [aSection('s', { song: aSong('m'), inCount: 16, blocks })] })
    expect(report.blocks.map(({ alignment }) => alignment!.grade)).toEqual(['count', 'phrase', 'count'].toSpliced(0, 1, 'eight'))
    expect(report.sections[0]!.aligned).toBe(0.5)
  })
})

describe('snapping', () => {
  it('moves each change to the nearest eight where they do not meet', () => {
    expect(snapToEights([9, 30, 63], 8)).toEqual([8, 32, 64])
    expect(snapToEights([7, 13], 6)).toEqual([6, 12])
  })

  it('keeps changes apart and in order', () => {
    expect(snapToEights([2, 4], 8)).toEqual([8, 16])
    expect(snapToEights([15, 17, 18], 8)).toEqual([8, 16, 24])
    expect(snapToEights([], 8)).toEqual([])
  })

  it('leaves what is whole alone', () => {
    const eights = fc
      .uniqueArray(fc.integer({ min: 1, max: 40 }), { maxLength: 8 })
      .map((places) => places.sort((a, b) => a - b).map((place) => place * 8))
    fc.assert(
      fc.property(eights, (boundaries) => {
        expect(snapToEights(boundaries, 8)).toEqual(boundaries)
      }),
    )
  })

  it('moves as little in all as the best of every possible way', () => {
    const boundaries = fc
      .uniqueArray(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 4 })
      .map((counts) => counts.sort((a, b) => a - b))
    fc.assert(
      fc.property(boundaries, fc.constantFrom(6, 8), (counts, eight) => {
        const snapped = snapToEights(counts, eight)
        const cost = (way: readonly number[]) => way.reduce((sum, place, i) => sum + Math.abs(place - counts[i]!), 0)
        for (const [i, place] of snapped.entries()) {
          expect(place % eight).toBe(0)
          expect(place).toBeGreaterThan(snapped[i - 1] ?? 0)
        }
        expect(cost(snapped)).toBe(Math.min(...everyWay(counts.length, eight, 12).map(cost)))
      }),
    )
  })
})

/** All rising ways to put so many changes on the first `most` eights. */
function everyWay(changes: number, eight: number, most: number, first = 1): number[][] {
  if (changes === 0) return [[]]
  return Array.from({ length: Math.max(0, most - first + 1) }, (_, i) => first + i).flatMap((place) =>
    everyWay(changes - 1, eight, most, place + 1).map((rest) => [place * eight, ...rest]),
  )
}

it('shows a tempo error as drift at the end', () => {
  expect(driftSeconds(240, 0.5)).toBe(1.2)
  expect(driftSeconds(200, -1)).toBe(-2)
})
