import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { snapMark } from '#engine/alignment/snapMark.ts'
import { tapOnes } from '#engine/alignment/tapOnes.ts'
import { seededRandom } from '#engine/roughIn/seededRandom.ts'
import { gridOfTempo, secondAt, withOdd } from '#plan/songs/beatGrid.ts'

describe('tapOnes', () => {
  it('finds how many beats make a bar and which is the one, from sixteen ones tapped as people tap, some bars missed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 180, noNaN: true }),
        fc.constantFrom(3 as const, 4 as const),
        fc.integer({ min: 0, max: 3 }),
        fc.integer({ min: 0, max: 2 ** 31 }),
        (bpm, bar, place, seed) => {
          const random = seededRandom(seed)
          const grid = gridOfTempo(bpm, 6, bar === 3 ? 4 : 3)
          const ones = Array.from({ length: 20 }, (_, i) => i)
            .filter(() => random() < 0.8)
            .map((i) => secondAt(grid, (place % bar) + i * bar) + (random() - 0.5) * 0.6 * (60 / bpm))
          const said = tapOnes(grid, ones)
          expect(said).toMatchObject({ beatsPerBar: bar, agree: ones.length })
          expect((((said!.shift - place) % bar) + bar) % bar).toBe(0)
          expect(Math.abs(said!.shift)).toBeLessThanOrEqual(bar / 2 + 0.5)
        },
      ),
    )
  })

  it('says nothing from too few taps, or from taps on any beat', () => {
    const grid = gridOfTempo(120)
    expect(tapOnes(grid, [0, 2, 4])).toBeNull()
    expect(tapOnes(grid, [0, 0.5, 1.5, 3.5, 4, 6.5, 7.5, 9])).toBeNull()
  })

  it('keeps the song’s own bar where taps would suit several', () => {
    const everyTwelfth = [0, 12, 24, 36].map((beat) => beat / 2)
    expect(tapOnes(gridOfTempo(120, 0, 4), everyTwelfth)).toMatchObject({ beatsPerBar: 4 })
    expect(tapOnes(gridOfTempo(120, 0, 3), everyTwelfth)).toMatchObject({ beatsPerBar: 3 })
  })

  it('takes the distance that most taps keep for the bar, however often a one was missed', () => {
    const taps = (beats: number[]) => tapOnes(gridOfTempo(120), beats.map((beat) => beat / 2)) // biome-ignore format: one row
    expect(taps([0, 6, 12, 24])).toMatchObject({ beatsPerBar: 6 })
    expect(taps([0, 12, 18, 24, 36, 42])).toMatchObject({ beatsPerBar: 6 })
    expect(taps([0, 3, 6, 12])).toMatchObject({ beatsPerBar: 3 })
  })

  it('hears beats over and missing where the bars shift at a steady tempo, whatever else is missed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(3 as const, 4 as const),
        fc.integer({ min: 5, max: 9 }),
        fc.integer({ min: 1, max: 3 }),
        fc.boolean(),
        fc.integer({ min: 0, max: 2 ** 31 }),
        (bar, bars, beats, isMissing, seed) => {
          fc.pre(beats < bar)
          const random = seededRandom(seed)
          const over = isMissing ? -beats : beats
          const grid = gridOfTempo(120, 0.5, bar)
          // Ones as the song has them: whole bars, then the odd place, then whole bars again; the last and first are tapped.
          const played = Array.from({ length: 16 }, (_, i) => i * bar + (i >= bars ? over : 0))
          const ones = played
            .filter((_, i) => i === 0 || i === bars - 1 || i === bars || random() < 0.9)
            .map((beat) => secondAt(grid, beat) + (random() - 0.5) * 0.2)
          const said = tapOnes(grid, ones)
          expect(said).toMatchObject({ beatsPerBar: bar, shift: 0, agree: ones.length })
          // A bar cut short and one that is long are the same ones, told the shorter way.
          const [[count, found] = [0, 0], ...more] = said!.odd!
          expect(more).toEqual([])
          expect((((found - over) % bar) + bar) % bar).toBe(0)
          expect(count % bar).toBe(0)
          expect(secondAt(withOdd(grid, said!.odd!), count)).toBeCloseTo(secondAt(grid, bars * bar + over), 6)
        },
      ),
    )
  })

  it('leaves odd places it knows, and tells no shift from a tap or two', () => {
    const known = withOdd(gridOfTempo(120), [[32, 2]])
    const ones = Array.from({ length: 14 }, (_, i) => secondAt(known, i * 4))
    expect(tapOnes(known, ones)).toEqual({ beatsPerBar: 4, shift: 0, agree: 14, of: 14 })
    const strayed = ones.map((second, i) => (i === 6 || i === 7 ? second + 1 : second))
    expect(tapOnes(known, strayed)).toEqual({ beatsPerBar: 4, shift: 0, agree: 12, of: 14 })
  })

  it('does not put the first beat before the song', () => {
    expect(tapOnes(gridOfTempo(120, 0.1), [1.6, 3.6, 5.6, 7.6])).toMatchObject({ shift: 3 })
    expect(tapOnes(gridOfTempo(120, 0.6), [2.1, 4.1, 6.1, 8.1])).toMatchObject({ shift: -1 })
  })
})

describe('snapMark', () => {
  it('goes to the nearest eight or count, never before the song', () => {
    expect([3.9, 4.1, 11.9].map((place) => snapMark(place, 8))).toEqual([0, 8, 8])
    expect(snapMark(13.6, 1)).toBe(14)
    expect(snapMark(5, 8, 3)).toBe(3)
    expect(snapMark(0, 8, 6)).toBe(6)
  })
})
