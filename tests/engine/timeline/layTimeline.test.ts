import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Ride } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSet, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const rideOf = (...sections: Ride['sections']): Ride => ({ ...smallRide(), sections })
/** A song of 64 counts at 120 beats a minute: 32 seconds. */
const short = (id = 'short') => aSong(id, { lengthSeconds: 32 })
const spansOf = (ride: Ride) => computeRide(ride).spans.map(({ kind, from, to }) => [kind, from, to])

describe('the timeline', () => {
  it('runs briefing, lead-in, blocks, open tail, clear-up', () => {
    const ride = rideOf(aSection('s', { song: short(), leadInSeconds: 2, blocks: [aBlock('a', { length: { counts: 48 } })] }))
    expect(spansOf({ ...ride, briefingSeconds: 30, clearUpSeconds: 60 })).toEqual([
      ['briefing', 0, 30],
      ['leadIn', 30, 32],
      ['block', 32, 56],
      ['openTail', 56, 64],
      ['clearUp', 64, 124],
    ])
  })

  it('plays a set round by round, part by part', () => {
    const ride = rideOf(
      aSection('s', { blocks: [aSet('set', [aBlock('push', inSeconds(20)), aBlock('ease', inSeconds(40))], { rounds: 2 })] }),
    )
    const { blocks } = computeRide(ride)
    expect(blocks.map(({ block, set, from, to }) => [block.id, set?.round, set?.part, from, to])).toEqual([
      ['push', 1, 1, 0, 20],
      ['ease', 1, 2, 20, 60],
      ['push', 2, 1, 60, 80],
      ['ease', 2, 2, 80, 120],
    ])
  })

  it('ends a song at its last whole eight', () => {
    // 70 counts: eight eights and six beats over.
    const report = computeRide(rideOf(aSection('s', { song: aSong('m', { lengthSeconds: 35 }), blocks: [] })))
    expect(report.sections[0]!.counts).toEqual({ in: 0, out: 64, total: 64 })
    expect(report.overall.total).toBe(32)
  })

  it('loses no eight to a length rounded to hundredths', () => {
    // 52 eights at 172 beats a minute last 145.1163 s.
    for (const lengthSeconds of [(416 * 60) / 172, 145.116, 145.12]) {
      const song = aSong('m', { grid: gridOfTempo(172), lengthSeconds })
      expect(computeRide(rideOf(aSection('s', { song }))).sections[0]!.counts!.total).toBe(416)
    }
  })

  it('starts at the in-point and ends at the out-point', () => {
    const section = aSection('s', { song: short(), inCount: 16, outCount: 48, blocks: [aBlock('a', { length: { counts: 32 } })] })
    const report = computeRide(rideOf(section))
    expect(report.overall.total).toBe(16)
    expect(report.blocks[0]).toMatchObject({ countFrom: 0, countTo: 32, from: 0, to: 16 })
  })

  it('plays what lies beyond the out-point, and says how much', () => {
    const section = aSection('s', {
      song: short(),
      blocks: [aBlock('a', { length: { counts: 48 } }), aBlock('b', { length: { counts: 32 } })],
    })
    const report = computeRide(rideOf(section))
    expect(report.overall.total).toBe(40)
    expect(report.sections[0]).toMatchObject({ open: 0, beyond: 16 })
    expect(report.blocks.map(({ beyond }) => beyond)).toEqual([0, 16])
  })

  it('lets a crossfade end the section before', () => {
    const first = aSection('first', { song: short('a'), blocks: [aBlock('a'), aBlock('b', { length: { counts: 0 + 16 } })] })
    const second = aSection('second', { song: short('b'), leadInSeconds: -4, blocks: [aBlock('c')] })
    const report = computeRide(rideOf({ ...first, outCount: 80 }, second))
    expect(report.spans.map(({ kind, from, to }) => [kind, from, to])).toEqual([
      ['block', 0, 32],
      ['block', 32, 36],
      ['block', 36, 68],
    ])
    expect(report.blocks[1]).toMatchObject({ from: 32, to: 36, sectionTo: 36, countTo: 80 })
    expect(report.sections[1]).toMatchObject({ from: 36, one: 36 })
  })

  it('never lets a crossfade reach back past the count one before it', () => {
    const report = computeRide(
      rideOf(
        aSection('a', { blocks: [aBlock('x', inSeconds(10))] }),
        aSection('b', { leadInSeconds: -60, blocks: [aBlock('y', inSeconds(20))] }),
      ),
    )
    expect(report.spans.map(({ kind, from, to }) => [kind, from, to])).toEqual([['block', 0, 20]])
    expect(report.blocks[0]).toMatchObject({ from: 0, to: 0 })
    expect(report.findings.map(({ rule }) => rule)).toContain('deepCrossfade')
  })

  it('has no song to fade from before the first section', () => {
    expect(spansOf(rideOf(aSection('a', { leadInSeconds: -5, blocks: [aBlock('x', inSeconds(10))] })))).toEqual([['block', 0, 10]])
  })

  it('lasts as long as its song where no beat is known', () => {
    const song = aSong('m', { grid: undefined, lengthSeconds: 100 })
    expect(computeRide(rideOf(aSection('s', { song, blocks: [aBlock('x', inSeconds(70))] }))).sections[0]).toMatchObject({
      to: 100,
      open: 30,
    })
    expect(computeRide(rideOf(aSection('s', { song, blocks: [aBlock('x', inSeconds(130))] }))).sections[0]).toMatchObject({
      to: 130,
      beyond: 30,
    })
  })

  it('counts in sixes in three and in six', () => {
    for (const beatsPerBar of [3, 6] as const) {
      // 100 counts hold sixteen sixes.
      const song = aSong('m', { grid: { ...gridOfTempo(120), beatsPerBar }, lengthSeconds: 50 })
      const [section] = computeRide(rideOf(aSection('s', { song }))).sections
      expect(section).toMatchObject({ counts: { total: 96 }, unit: { eight: 6, phrase: 24, name: 'six' } })
    }
  })

  it('follows a song whose tempo changes', () => {
    // Sixteen counts at 120, then at 60.
    const grid = {
      anchors: [
        [0, 1],
        [16, 9],
        [32, 25],
      ] as [number, number][],
      beatsPerBar: 4 as const,
    }
    const song = aSong('m', { grid, lengthSeconds: 30 })
    const blocks = [aBlock('a', { length: { counts: 8 } }), aBlock('b', { length: { counts: 16 } }), aBlock('c', { length: { counts: 8 } })]
    expect(computeRide(rideOf(aSection('s', { song, blocks }))).blocks.map(({ from, to }) => [from, to])).toEqual([
      [0, 4],
      [4, 16],
      [16, 24],
    ])
  })
})

describe('spans of any ride', () => {
  it('tile it: each begins at the very number where the one before ends', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const { spans, overall } = computeRide(ride)
        let clock = 0
        for (const { from, to } of spans) {
          expect(from).toBe(clock)
          expect(to).toBeGreaterThan(from)
          clock = to
        }
        expect(clock).toBe(overall.total)
      }),
    )
  })

  it('hold every block that lasts, once and in order', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const { spans, blocks } = computeRide(ride)
        const played = spans.filter(({ kind }) => kind === 'block')
        expect(played.map(({ block }) => block)).toEqual(blocks.filter(({ from, to }) => to > from).map(({ index }) => index))
        for (const { block, from, to, sectionId } of played) expect(blocks[block!]).toMatchObject({ from, to, sectionId })
      }),
    )
  })

  it('share out what lies beyond the out-point among the blocks that do', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const { sections, blocks } = computeRide(ride)
        for (const { blocks: own, beyond, open } of sections) {
          const sum = blocks.slice(own.from, own.to).reduce((total, block) => total + block.beyond, 0)
          expect(sum).toBeCloseTo(beyond, 6)
          expect(Math.min(beyond, open)).toBe(0)
        }
      }),
    )
  })

  it('keep their counts when every song is swapped for a faster one', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.integer({ min: 60, max: 200 }), (ride, bpm) => {
        const swapped = ride.sections.map((section) =>
          section.song?.grid
            ? { ...section, song: { ...section.song, grid: { ...gridOfTempo(bpm), beatsPerBar: section.song.grid.beatsPerBar } } }
            : section,
        )
        const counts = (of: Ride) => computeRide(of).blocks.map(({ countFrom, countTo }) => [countFrom, countTo])
        expect(counts({ ...ride, sections: swapped })).toEqual(counts(ride))
      }),
    )
  })

  it('do not drift: a thousand blocks end where the counts say', () => {
    const grid = gridOfTempo(173)
    const blocks = Array.from({ length: 1000 }, (_, i) => aBlock(`b${i}`, { length: { counts: 7 } }))
    const report = computeRide(rideOf(aSection('s', { song: aSong('m', { grid, lengthSeconds: 9000 }), outCount: 7000, blocks })))
    expect(report.overall.total).toBe((7000 * 60) / 173)
  })
})
