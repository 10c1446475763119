import { expect, it } from 'vitest'
import { paceRange } from '#engine/cadence/paceRange.ts'
import { computeRide } from '#engine/computeRide.ts'
import type { Block, Section, Song } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const played = (song: Partial<Song> | null, blocks: Partial<Block>[]) => {
  const section: Section = aSection('s', { song: song && aSong('m', song), blocks: blocks.map((block, i) => aBlock(`b${i}`, block)) })
  return computeRide({ ...smallRide(), sections: [section] }).blocks.map(({ cadence }) => cadence)
}
const cadenceOf = (block: Partial<Block>, song: Partial<Song> | null = {}) => played(song, [block])[0]!
const cadencesOf = (song: Partial<Song>, lengths: number[]) =>
  played(
    song,
    lengths.map((counts) => ({ length: { counts } })),
  )

const gridOf = (anchors: [number, number][]) => ({ anchors, beatsPerBar: 4 as const })

const turning = (from: number, to = from) => ({
  kind: 'turning',
  from,
  to,
  least: Math.min(from, to),
  most: Math.max(from, to),
  mean: (from + to) / 2,
})

it('follows tempo and strikes per beat', () => {
  expect(cadenceOf({}, { grid: gridOfTempo(172) })).toEqual(turning(86))
  expect(cadenceOf({}, { grid: gridOfTempo(84), strikesPerBeat: 2 })).toEqual(turning(84))
  expect(cadenceOf({ strikesPerBeat: 0.5 }, { grid: gridOfTempo(160) })).toEqual(turning(40))
})

it('is what the block states, where it states one', () => {
  expect(cadenceOf({ cadence: { rpm: 70, rampTo: 90 } })).toEqual(turning(70, 90))
  expect(cadenceOf({ cadence: 'legsStill' })).toEqual({ kind: 'still' })
  expect(cadenceOf({ ...inSeconds(60), cadence: { rpm: 85 } }, null)).toEqual(turning(85))
})

it('is unknown off the beat and without one, and still off the bike', () => {
  expect(cadenceOf({ strikesPerBeat: null })).toEqual({ kind: 'unknown' })
  expect(cadenceOf(inSeconds(60), null)).toEqual({ kind: 'unknown' })
  expect(cadenceOf({ ...inSeconds(60), posture: 'offBike' }, null)).toEqual({ kind: 'still' })
})

it('is still off the bike whatever is stated', () => {
  expect(cadenceOf({ ...inSeconds(60), posture: 'offBike', cadence: { rpm: 70 } }, null)).toEqual({ kind: 'still' })
})

it('of a song that quickens and falls back is told by how far it goes, not by its ends', () => {
  const grid = gridOf([
    [0, 0],
    [16, 8],
    [48, 20.8],
    [64, 28.8],
  ])
  const cadence = cadenceOf({}, { grid, lengthSeconds: 28.8 })
  expect(cadence).toMatchObject({ from: 60, to: 60, least: 60, most: 75, mean: expect.closeTo((30 * 64) / 28.8, 9) })
  expect(cadence.kind === 'turning' && paceRange(cadence)).toEqual([60, 75])
})

it('of beats heard one by one is an eight of them at their mean, and follows a jump that is none of their jitter', () => {
  const late = (count: number) => (count % 3) * 0.006
  const heard = (count: number): [number, number] => [count, count / 2 + late(count)]
  const jittered = cadenceOf({}, { grid: gridOf(Array.from({ length: 80 }, (_, count) => heard(count))) })
  if (jittered.kind !== 'turning') throw new Error('turns')
  expect(jittered.pieces).toHaveLength(8)
  for (const { rpm } of jittered.pieces!) expect(rpm).toBeCloseTo(60, 0)
  const jump = Array.from({ length: 80 }, (_, count): [number, number] => [count, count < 36 ? count / 2 : 18 + (count - 36) / 2.5])
  expect(cadenceOf({}, { grid: gridOf(jump) })).toMatchObject({
    pieces: [
      { to: 18, rpm: expect.closeTo(60, 9) },
      { to: expect.closeTo(29.2, 9), rpm: expect.closeTo(75, 9) },
    ],
  })
})

it('goes on through beats over and missing', () => {
  const odd = (list: [number, number][]) => ({ grid: { ...gridOfTempo(120), odd: list } })
  const only = cadenceOf(
    {},
    odd([
      [32, 3],
      [48, -2],
    ]),
  )
  expect(only).toMatchObject({ from: expect.closeTo(60.5, 9), least: expect.closeTo(60.5, 9), most: expect.closeTo(60.5, 9) })
})

it('goes with a song that speeds up, from the first eight of the block to its last', () => {
  const grid = {
    anchors: [
      [0, 0],
      [32, 16],
      [64, 28],
    ] as [number, number][],
    beatsPerBar: 4 as const,
  }
  // 120 beats a minute, then 160.
  expect(cadenceOf({}, { grid, lengthSeconds: 28 })).toEqual({
    ...turning(60, 80),
    mean: expect.closeTo((30 * 64) / 28, 9),
    pieces: [
      { to: 16, rpm: 60 },
      { to: 28, rpm: 80 },
    ],
  })

  // An eight half before the change of tempo, half after it; and one past the end of the song, which goes on as it ended.
  const [across, past] = cadencesOf({ grid, lengthSeconds: 28 }, [28, 32, 10]).slice(1)
  expect(across).toMatchObject({ from: expect.closeTo((8 * 60) / 3.5 / 2, 9) })
  expect(past).toEqual(turning(80))
})
