import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { countAt, secondAt } from '#plan/songs/beatGrid.ts'
import { beatAt, countOfBeat, faultOfOdd, type OddPlace, startOfOdd } from '#plan/songs/oddBeats.ts'
import { formatOdd, oddText, parseOdd } from '#plan/songs/oddText.ts'
import { arbitraryOdd } from '#tests/support/arbitraryOdd.ts'
import { arbitraryGrid } from '#tests/support/arbitraryRide.ts'
import { told } from '#tests/support/told.ts'
import type { Text } from '#words/said.ts'

/** The beats of a song one by one, each with the count it is called by; none for a beat that is over. */
function countedOut(odd: readonly OddPlace[], counts: number): Map<number, number> {
  const beats = new Map<number, number>()
  let beat = 0
  for (let count = 0; count < counts; count++) {
    const over = odd.find(([at]) => at === count)?.[1] ?? 0
    if (over > 0) beat += over
    const isMissing = odd.some((place) => count > startOfOdd(place) && count < place[0] && place[1] < 0)
    if (!isMissing) beats.set(count, beat++)
  }
  return beats
}

describe('beats over or missing', () => {
  it('are counted as if one by one', () => {
    fc.assert(
      fc.property(arbitraryOdd, (odd) => {
        for (const [count, beat] of countedOut(odd, 500)) {
          expect(beatAt(odd, count)).toBe(beat)
          expect(countOfBeat(odd, beat)).toBe(count)
        }
      }),
    )
  })

  it('give one count a beat and one beat a count, more always later, between whole ones too', () => {
    fc.assert(
      fc.property(
        arbitraryOdd,
        fc.double({ min: -20, max: 600, noNaN: true }),
        fc.double({ min: 1e-3, max: 30, noNaN: true }),
        (odd, count, more) => {
          expect(countOfBeat(odd, beatAt(odd, count))).toBeCloseTo(count, 8)
          expect(beatAt(odd, countOfBeat(odd, count))).toBeCloseTo(count, 8)
          expect(beatAt(odd, count + more)).toBeGreaterThan(beatAt(odd, count))
        },
      ),
    )
  })

  it('leave time even over beats, through any grid, both ways', () => {
    fc.assert(
      fc.property(arbitraryGrid, arbitraryOdd, fc.double({ min: -5, max: 900, noNaN: true }), (plain, odd, count) => {
        const grid = { ...plain, odd }
        for (const [at, second] of grid.anchors) expect(secondAt(grid, at)).toBe(second)
        const second = secondAt(grid, count)
        expect(countAt(grid, second)).toBeCloseTo(count, 6)
        expect(secondAt(grid, count + 0.5)).toBeGreaterThan(second)
      }),
    )
  })

  it('are a list only in order and with room', () => {
    expect(
      faultOfOdd([
        [8, 2],
        [16, -7],
      ]),
    ).toBeUndefined()
    expect(faultOfOdd([[8, -7]])).toBeUndefined()
    expect(faultOfOdd([[8, -8]])).toEqual({ index: 0, fault: 'noRoom' })
    expect(faultOfOdd([[0, 1]])).toEqual({ index: 0, fault: 'noRoom' })
    expect(
      faultOfOdd([
        [8, 2],
        [16, -8],
      ]),
    ).toEqual({ index: 1, fault: 'noRoom' })
    expect(
      faultOfOdd([
        [8, 2],
        [8, 1],
      ]),
    ).toEqual({ index: 1, fault: 'notRising' })
    expect(faultOfOdd([[8, 0]])).toEqual({ index: 0, fault: 'none' })
    expect(faultOfOdd([[8, 1.5]])).toEqual({ index: 0, fault: 'notWhole' })
  })
})

describe('a list of odd places as text', () => {
  it('is read as it is written', () => {
    fc.assert(
      fc.property(
        arbitraryOdd,
        fc.constantFrom(6, 8),
        (odd, eight) => void expect(parseOdd(formatOdd(odd, eight), eight)).toEqual({ ok: true, value: odd }),
      ),
    )
    expect(parseOdd('65 2 missing\n33+4  -1\n 9 2 beats over', 8)).toEqual({
      ok: true,
      value: [
        [64, 2],
        [260, -1],
        [512, -2],
      ],
    })
    expect(told(oddText([64, 2], 8))).toBe('2 extra beats before eight 9')
    expect(told(oddText([54, -1], 6))).toBe('1 missing beat before six 10')
  })

  it.each([
    ['33', '“33” can’t be read. Write one place per line, the eight and the beats: 33 +2 or 65 −1.'],
    ['33 1.5', '“33 1.5” has part of a beat; extra and missing beats are whole.'],
    ['33 0', '“33 0” adds and drops no beat. Remove the line.'],
    ['33 +65', '“33 +65” has too many: at most 64 beats can be extra or missing in one place.'],
    ['33 +2\n33 −1', 'There are two lines for eight 33. Write all its beats in one.'],
    ['1 +2', 'Nothing is counted before eight 1, so no beat can be extra or missing there. Set the first beat instead.'],
    ['2 −8', 'Before eight 2 at most 7 can be missing, not 8: only 8 counts come before it from the first beat on.'],
    ['33 +2\n34 −9', 'Before eight 34 at most 7 can be missing, not 9: only 8 counts come before it after eight 33.'],
    ['33+9 1', 'Counts after the plus must be fewer than 8.'],
  ])('says what is wrong with “%s”', (text, problem) => {
    const read = parseOdd(text, 8)
    expect(read.ok ? '' : told(read.problem as Text)).toBe(problem)
  })
})
