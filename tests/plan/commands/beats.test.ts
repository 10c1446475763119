import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { moveBeats } from '#plan/commands/moveBeats.ts'
import { rescaleBeats } from '#plan/commands/rescaleBeats.ts'
import { setOddBeats } from '#plan/commands/setOddBeats.ts'
import { type Ride, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import { countAt, gridOfTempo, secondAt } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const sectionId = 's'
const ride = (bpm: number, strikesPerBeat: StrikesPerBeat = 1): Ride => ({
  ...smallRide(),
  sections: [
    aSection(sectionId, {
      song: aSong('song', {
        grid: gridOfTempo(bpm, 0.3),
        strikesPerBeat,
        marks: [{ count: 64, label: 'chorus' }],
        quiet: [{ from: 64, to: 96 }],
      }),
      blocks: [
        aBlock('a', { cues: [{ id: 'c', moment: 'announce', lead: { counts: 8 }, text: 'Next.' }] }),
        aBlock('b', { length: { counts: 96 }, move: { name: 'jump', counts: 8 } }),
      ],
    }),
  ],
})
const songOf = (one: Ride) => one.sections[0]!.song!

describe('a tempo read at twice or half its value', () => {
  it('leaves blocks their times and legs their cadence', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 190 }), fc.constantFrom(2 as const, 0.5 as const), (bpm, factor) => {
        const before = ride(bpm)
        const after = rescaleBeats(before, { sectionId, factor }).apply(before)
        expect(tempoOf(songOf(after).grid!)).toBeCloseTo(bpm * factor, 6)
        const seen = (one: Ride) =>
          computeRide(one).blocks.map(({ from, to, cadence }) => [
            from.toFixed(5),
            to.toFixed(5),
            cadence.kind,
            'from' in cadence && cadence.from.toFixed(5),
          ])
        expect(seen(after)).toEqual(seen(before))
      }),
    )
  })

  it('is undone by its opposite, marks, quiet windows and words with it', () => {
    const before = ride(128)
    const doubled = rescaleBeats(before, { sectionId, factor: 2 }).apply(before)
    expect(songOf(doubled)).toMatchObject({ strikesPerBeat: 0.5, marks: [{ count: 128 }], quiet: [{ from: 128, to: 192 }] })
    expect(rescaleBeats(doubled, { sectionId, factor: 0.5 }).apply(doubled)).toEqual(before)
  })

  it('is left alone without beats and beyond what a tempo can be', () => {
    const fast = ride(250)
    expect(rescaleBeats(fast, { sectionId, factor: 2 }).apply(fast)).toBe(fast)
    expect(rescaleBeats(fast, { sectionId: 'none', factor: 2 }).apply(fast)).toBe(fast)
  })
})

describe('beats moved by a time', () => {
  it('keep their distances and go back where they were', () => {
    const before = ride(127.3)
    const later = moveBeats(before, { sectionId, seconds: 0.01 })
    expect(told(later.label)).toBe('Moved the beats of song 10 ms later')
    const moved = later.apply(before)
    expect(secondAt(songOf(moved).grid!, 40) - secondAt(songOf(before).grid!, 40)).toBeCloseTo(0.01, 6)
    expect(moveBeats(moved, { sectionId, seconds: -0.01 }).apply(moved)).toEqual(before)
  })

  it('do not leave the song at its beginning', () => {
    const before = ride(120)
    expect(moveBeats(before, { sectionId, seconds: -0.31 }).apply(before)).toBe(before)
  })
})

describe('beats a song has over or misses', () => {
  const places = fc.tuple(
    fc.integer({ min: 12, max: 400 }),
    fc.integer({ min: -7, max: 7 }).filter((beats) => beats !== 0),
  )

  it('stay where they are heard, and put all after them on the music', () => {
    fc.assert(
      fc.property(places, fc.constantFrom(60, 120, 127, 127.5, 93.333), ([count, beats], bpm) => {
        const before = ride(bpm)
        const { grid: old } = songOf(before)
        const { grid } = songOf(setOddBeats(before, { sectionId, odd: [[count, beats]] }).apply(before))
        for (const earlier of [0, count - 1 + Math.min(0, beats)]) expect(secondAt(grid!, earlier)).toBeCloseTo(secondAt(old!, earlier), 5)
        for (const later of [0, 1, 64, 5000]) {
          expect(secondAt(grid!, count + later)).toBeCloseTo(secondAt(old!, count + later + beats), 4)
        }
        expect(countAt(grid!, secondAt(old!, count + 8 + beats))).toBeCloseTo(count + 8, 5)
        expect(tempoOf(grid!)).toBeCloseTo(bpm, 6)
      }),
    )
  })

  it('leave the legs their cadence, and flip the foot with every odd number of strikes', () => {
    fc.assert(
      fc.property(places, fc.constantFrom(1 as const, 2 as const), ([count, beats], strikes) => {
        const plain = { ...ride(120, strikes) }
        plain.sections = plain.sections.map((section) => ({ ...section, lead: 'right' }))
        const odd = setOddBeats(plain, { sectionId, odd: [[count, beats]] }).apply(plain)
        const [was, is] = [computeRide(plain).blocks, computeRide(odd).blocks]
        expect(is.map(({ cadence }) => cadence)).toEqual(was.map(({ cadence }) => cadence))
        const one = was[1]!.countFrom!
        const flips = count <= one && (beats * strikes) % 2 !== 0
        // No foot lands on a count that is never heard.
        const isMissing = one < count && one > count - 1 + beats
        if (isMissing && strikes === 1) expect(is[1]!.foot).toBeNull()
        if (isMissing) return
        expect(is[1]!.foot === was[1]!.foot).toBe(!flips)
      }),
    )
  })

  it('are gone again without a trace', () => {
    fc.assert(
      fc.property(places, fc.constantFrom(120, 127.5), (place, bpm) => {
        const before = ride(bpm)
        const odd = setOddBeats(before, { sectionId, odd: [place] }).apply(before)
        const grid = songOf(setOddBeats(odd, { sectionId, odd: [] }).apply(odd)).grid!
        expect(grid.odd).toBeUndefined()
        for (const count of [0, 7, 100, 640]) expect(secondAt(grid, count)).toBeCloseTo(secondAt(songOf(before).grid!, count), 5)
      }),
    )
  })

  it('are named by what is done, and refused where there is no room for them', () => {
    const before = ride(120)
    expect(told(setOddBeats(before, { sectionId, odd: [[64, 2]] }).label)).toBe('Noted 2 extra beats before eight 9 in song')
    const odd = setOddBeats(before, { sectionId, odd: [[64, -1]] }).apply(before)
    expect(told(setOddBeats(odd, { sectionId, odd: [] }).label)).toBe('Removed 1 missing beat before eight 9 from song')
    for (const list of [
      [[0, 1]],
      [[8, -8]],
      [[8, 0]],
      [
        [16, 2],
        [16, 2],
      ],
      [
        [16, 2],
        [20, -4],
      ],
    ] as [number, number][][]) {
      expect(setOddBeats(before, { sectionId, odd: list }).apply(before)).toBe(before)
    }
  })

  it('keep their beats at half and at double the tempo', () => {
    fc.assert(
      fc.property(places, fc.constantFrom(2 as const, 0.5 as const), ([count, beats], factor) => {
        const before = setOddBeats(ride(120), { sectionId, odd: [[count, beats]] }).apply(ride(120))
        const after = rescaleBeats(before, { sectionId, factor }).apply(before)
        if (after === before) return
        const [old, grid] = [songOf(before).grid!, songOf(after).grid!]
        for (const at of [0, 2, count - (count % 2) - 20, count + (count % 2), count + (count % 2) + 40].filter((each) => each >= 0)) {
          expect(secondAt(grid, at * factor)).toBeCloseTo(secondAt(old, at), 5)
        }
        expect(grid.odd === undefined).toBe(factor === 0.5 && beats % 2 !== 0)
      }),
    )
  })
})
