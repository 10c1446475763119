import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { countAt, gridOfTempo, secondAt } from '#plan/beatGrid.ts'
import { insertOddBeats } from '#plan/commands/insertOddBeats.ts'
import { moveBeats } from '#plan/commands/moveBeats.ts'
import { rescaleBeats } from '#plan/commands/rescaleBeats.ts'
import { type Ride, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'

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
    expect(later.label).toBe('Moved the beats of song 10 ms later')
    const moved = later.apply(before)
    expect(secondAt(songOf(moved).grid!, 40) - secondAt(songOf(before).grid!, 40)).toBeCloseTo(0.01, 6)
    expect(moveBeats(moved, { sectionId, seconds: -0.01 }).apply(moved)).toEqual(before)
  })

  it('do not leave the song at its beginning', () => {
    const before = ride(120)
    expect(moveBeats(before, { sectionId, seconds: -0.31 }).apply(before)).toBe(before)
  })
})

describe('beats a song has over', () => {
  it('slow the counts before them, and put all after them on the music again', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 400 }), fc.integer({ min: 1, max: 7 }), (count, beats) => {
        const before = ride(120)
        const { grid: old } = songOf(before)
        const { grid } = songOf(insertOddBeats(before, { sectionId, count, beats }).apply(before))
        for (const earlier of [0, count - beats]) expect(secondAt(grid!, earlier)).toBeCloseTo(secondAt(old!, earlier), 5)
        for (const later of [0, 1, 64, 5000]) {
          expect(secondAt(grid!, count + later)).toBeCloseTo(secondAt(old!, count + later + beats), 5)
        }
        expect(countAt(grid!, secondAt(old!, count + 8 + beats))).toBeCloseTo(count + 8, 5)
      }),
    )
  })
})
