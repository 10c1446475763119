import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type BeatGrid, type Song, tempoOf } from '#plan/model.ts'
import { countAt, countsOf, eightOf, gridOfTempo, holdsTempo, secondAt } from '#plan/songs/beatGrid.ts'
import { aSection, aSong } from '#tests/support/smallRide.ts'

const BENT: BeatGrid = { anchors: [[0, 1], [60, 31], [120, 51]], beatsPerBar: 4 } // biome-ignore format: one row

describe('a beat grid', () => {
  it.each([
    [0, 1],
    [30, 16],
    [60, 31],
    [90, 41],
    [120, 51],
    [150, 61],
    [-10, -4],
  ])('count %d falls at %d s', (count, second) => {
    expect(secondAt(BENT, count)).toBeCloseTo(second, 9)
    expect(countAt(BENT, second)).toBeCloseTo(count, 9)
  })

  it.each([
    [172, [172, 60]],
    [127.6, [1276, 600]],
    [90.05, [9005, 6000]],
    [100.125, [100125, 60000]],
  ])('of %d bpm has whole counts and that very tempo', (bpm, last) => {
    const grid = gridOfTempo(bpm)
    expect(grid.anchors).toEqual([[0, 0], last])
    expect(tempoOf(grid)).toBe(bpm)
  })

  it('of any tempo keeps it to a thousandth, from its first beat on', () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 400, noNaN: true }), fc.double({ min: -5, max: 30, noNaN: true }), (bpm, firstBeat) => {
        const grid = gridOfTempo(bpm, firstBeat)
        expect(grid.anchors.every(([count]) => Number.isInteger(count))).toBe(true)
        expect(Math.abs(tempoOf(grid) - bpm)).toBeLessThanOrEqual(0.0005 + 1e-9)
        expect(secondAt(grid, 0) - firstBeat).toBe(0)
      }),
    )
  })

  it('counts in eights, or in sixes in three and in six', () => {
    expect([3, 4, 6].map((beatsPerBar) => eightOf({ ...BENT, beatsPerBar: beatsPerBar as 3 }))).toEqual([6, 8, 6])
    expect(eightOf(undefined)).toBe(8)
  })

  it('holds its tempo where stretches of eight counts take the same time, whatever single beats do', () => {
    expect(holdsTempo(gridOfTempo(127.6))).toBe(true)
    expect(holdsTempo(BENT)).toBe(false)
    const swung = Array.from({ length: 65 }, (_, count): [number, number] => [count, count / 2 + (count % 2) * 0.04])
    expect(holdsTempo({ anchors: swung, beatsPerBar: 4 })).toBe(true)
    const slower = swung.map(([count, second]): [number, number] => [count, second + Math.max(0, count - 32) * 0.02])
    expect(holdsTempo({ anchors: slower, beatsPerBar: 4 })).toBe(false)
  })

  it('offers the song’s whole eights between its points', () => {
    // Four minutes at 120 are 480 counts.
    expect(countsOf(aSection('s', { song: aSong('s') }))).toBe(480)
    expect(countsOf(aSection('s', { song: aSong('s'), inCount: 12 }))).toBe(464)
    expect(countsOf(aSection('s', { song: aSong('s'), inCount: 16, outCount: 99 }))).toBe(83)
    expect(countsOf(aSection('s', { song: aSong('s', { lengthSeconds: 3 }) }))).toBe(0)
    expect(countsOf(aSection('s'))).toBeNull()
  })

  describe('of a length in whole seconds, which is rounded', () => {
    const counts = (bpm: number, lengthSeconds: number, change: Partial<Song> = {}) =>
      countsOf(aSection('s', { song: aSong('s', { grid: gridOfTempo(bpm), lengthSeconds, ...change }) }))!

    it('takes an eight that ends within half a second of it', () => {
      // 52 eights at 132 a minute last 189.09 s.
      expect(counts(132, 189)).toBe(52 * 8)
      expect(counts(132, 188)).toBe(51 * 8)
      // 59 eights at 128 last 221.25 s, 61 at 132 221.82 s.
      expect(counts(128, 221)).toBe(59 * 8)
      expect(counts(132, 221)).toBe(60 * 8)
    })

    it('takes one that ends half a second after it, and none that ends later', () => {
      // 480 counts of half a second, moved by the first beat.
      const ends = (firstBeat: number) => counts(120, 240, { grid: gridOfTempo(120, firstBeat) })
      expect(ends(0.5)).toBe(480)
      expect(ends(0.501)).toBe(472)
    })

    it('gives nothing to a length with decimals or one read in the song’s own file', () => {
      expect(counts(132, 189.09)).toBe(52 * 8)
      expect(counts(132, 189.01)).toBe(51 * 8)
      expect(counts(132, 189, { fingerprint: 'f' })).toBe(51 * 8)
      expect(counts(132, 189.09, { fingerprint: 'f' })).toBe(52 * 8)
    })
  })
})
