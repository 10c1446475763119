import { describe, expect, it } from 'vitest'
import { parseRide } from '#plan/document/parseRide.ts'
import { from1 } from '#plan/migrations/from1.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

type Anchors = [number, number][]

/** Beats over before a count as version 1 held them: the counts before it twice as long, seconds to the microsecond. */
const bent = (bpm: number, count: number, beats: number): Anchors => {
  const at = (each: number) => Number((0.3 + (60 / bpm) * (each + Math.min(beats, Math.max(0, each - count + beats)))).toFixed(6))
  return [0, count - beats - 1, count - beats, count, count + 1, 1000].map((each) => [each, at(each)])
}
const opened = (anchors: Anchors) => {
  const ride = {
    ...smallRide(),
    schema: 1,
    sections: [aSection('s', { song: aSong('m', { grid: { anchors, beatsPerBar: 4 } }), blocks: [aBlock('b')] })],
  }
  const parsed = parseRide(ride)
  if (!parsed.ok) throw new Error(told(parsed.problems[0]!.text))
  return parsed.ride.sections[0]!.song!.grid!
}

describe('a bend of the tempo in version 1', () => {
  it('that a whole number of beats makes becomes an odd place, and every count keeps its second', () => {
    for (const bpm of [60, 97.3, 128, 174]) {
      for (const beats of [1, 2, 4, 7]) {
        const anchors = bent(bpm, 64, beats)
        const grid = opened(anchors)
        expect(grid.odd).toEqual([[64, beats]])
        expect(grid.anchors).toEqual(anchors)
        for (const count of [0, 63 - beats, 64, 200])
          expect(secondAt(grid, count)).toBeCloseTo(secondAt({ anchors, beatsPerBar: 4 }, count), 4)
      }
    }
  })

  it('may be beats that are missing', () => {
    const anchors: Anchors = [
      [0, 0],
      [24, 12],
      [32, 15],
      [64, 31],
    ]
    expect(opened(anchors).odd).toEqual([[32, -2]])
  })

  it.each<[string, Anchors]>([
    [
      'part of a beat',
      [
        [0, 0],
        [24, 12],
        [32, 16.75],
        [64, 32.75],
      ],
    ],
    [
      'another tempo after it',
      [
        [0, 0],
        [24, 12],
        [32, 17],
        [64, 34],
      ],
    ],
    [
      'nothing before it',
      [
        [0, 0],
        [8, 5],
        [64, 33],
      ],
    ],
    [
      'a song that drifts',
      [
        [0, 0],
        [32, 16],
        [64, 31.5],
        [96, 46.6],
      ],
    ],
    [
      'one tempo',
      [
        [0, 0],
        [128, 60],
      ],
    ],
  ])('is left as it is with %s', (_, anchors) => {
    const grid = opened(anchors)
    expect(grid).toEqual({ anchors, beatsPerBar: 4 })
  })

  it('is looked for in whatever is there', () => {
    for (const sections of [
      undefined,
      3,
      [null, {}, { song: null }, { song: { grid: null } }, { song: { grid: { anchors: [1, [2]] } } }],
    ]) {
      expect(from1.apply({ schema: 1, sections })).toEqual({ schema: 1, sections })
    }
  })
})
