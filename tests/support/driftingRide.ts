import fc from 'fast-check'
import { CONSTANTS } from '#engine/constants.ts'
import { type BeatGrid, type Block, CURRENT_SCHEMA, type Ride } from '#plan/model.ts'
import { type OddPlace, startOfOdd } from '#plan/songs/oddBeats.ts'
import { aBlock, aSection, aSong, smallRide } from './smallRide.ts'

/** The time constant that heart rate is predicted with, as the engine has it. */
export const HEART_TAU = CONSTANTS.heartRateTau.default

const second = (value: number) => Number(value.toFixed(4))

/** Songs whose tempo goes from one anchor to the next, bars to phrases apart, starting on count 0. */
export const drifting: fc.Arbitrary<BeatGrid> = fc
  .array(fc.record({ counts: fc.integer({ min: 8, max: 64 }), bpm: fc.integer({ min: 96, max: 176 }) }), { minLength: 2, maxLength: 12 })
  .map((stretches) => {
    const anchors: BeatGrid['anchors'][number][] = [[0, 0.4]]
    for (const { counts, bpm } of stretches) {
      const [count, at] = anchors.at(-1)!
      anchors.push([count + counts, second(at + (60 * counts) / bpm)])
    }
    return { anchors, beatsPerBar: 4 }
  })

/** Songs as they are heard: an anchor on every beat, a little early and late, at a tempo that wanders. */
export const heard: fc.Arbitrary<BeatGrid> = fc
  .record({ bpm: fc.integer({ min: 96, max: 170 }), late: fc.array(fc.integer({ min: -4, max: 4 }), { minLength: 60, maxLength: 300 }) })
  .map(({ bpm, late }) => {
    let at = 0.4
    const anchors = late.map((ms, count): [number, number] => {
      const here = at
      at += 60 / (bpm * (1 + 0.04 * Math.sin(count / 40)))
      return [count, second(here + ms / 1000)]
    })
    return { anchors, beatsPerBar: 4 }
  })

/** The song with beats over and missing at some counts: what is over takes its own time, and what is missing none. */
const withPlaces = (grid: BeatGrid, places: readonly { gap: number; beats: number }[]): BeatGrid => {
  let count = 0
  const odd = places.flatMap(({ gap, beats }): OddPlace[] => {
    count += gap
    return beats === 0 || count >= grid.anchors.at(-1)![0] ? [] : [[count, beats]]
  })
  if (odd.length === 0) return grid
  const later = odd.map(([at, beats]) => {
    const next = grid.anchors.findIndex(([c]) => c >= at)
    const [[c0, t0], [c1, t1]] = [grid.anchors[next - 1]!, grid.anchors[next]!]
    return { at, seconds: (beats * (t1 - t0)) / (c1 - c0) }
  })
  const anchors = grid.anchors
    .filter(([c]) => odd.every((place) => c <= startOfOdd(place) || c >= place[0]))
    .map(([c, t]): [number, number] => [c, second(later.reduce((sum, { at, seconds }) => (c >= at ? sum + seconds : sum), t))])
  return { ...grid, anchors, odd }
}

const blocks = fc.array(
  fc.record({
    eights: fc.integer({ min: 1, max: 12 }),
    total: fc.integer({ min: 0, max: 16 }),
    posture: fc.constantFrom('seated' as const, 'standing' as const),
  }),
  { minLength: 1, maxLength: 6 },
)

/** Two songs with odd bars here and there, ridden at many loads on either brake. */
export const driftingRide = (grids: fc.Arbitrary<BeatGrid>): fc.Arbitrary<Ride> =>
  fc
    .record({
      songs: fc.array(
        fc.record({
          grid: grids,
          places: fc.array(fc.record({ gap: fc.integer({ min: 12, max: 90 }), beats: fc.integer({ min: -4, max: 4 }) }), { maxLength: 2 }),
          blocks,
        }),
        { minLength: 2, maxLength: 2 },
      ),
      brake: fc.constantFrom('friction' as const, 'magnetic' as const),
    })
    .map(({ songs, brake }) => {
      const ride = smallRide()
      return {
        ...ride,
        schema: CURRENT_SCHEMA,
        bike: { ...ride.bike, brake },
        sections: songs.map(({ grid, places, blocks: plan }, s) => {
          const own = withPlaces(grid, places)
          return aSection(`s${s}`, {
            song: aSong(`m${s}`, { grid: own, lengthSeconds: 900 }),
            outCount: plan.reduce((sum, { eights }) => sum + 8 * eights, 0),
            blocks: plan.map(
              ({ eights, total, posture }, b): Block =>
                aBlock(`s${s}b${b}`, { length: { counts: 8 * eights }, posture, resistance: { kind: 'total', from: total, to: total } }),
            ),
          })
        }),
      }
    })
