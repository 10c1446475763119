import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { gridOfTempo } from '#plan/beatGrid.ts'
import type { Block, Section, Song } from '#plan/model.ts'
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

it('follows tempo and strikes per beat', () => {
  expect(cadenceOf({}, { grid: gridOfTempo(172) })).toEqual({ kind: 'turning', from: 86, to: 86 })
  expect(cadenceOf({}, { grid: gridOfTempo(84), strikesPerBeat: 2 })).toEqual({ kind: 'turning', from: 84, to: 84 })
  expect(cadenceOf({ strikesPerBeat: 0.5 }, { grid: gridOfTempo(160) })).toEqual({ kind: 'turning', from: 40, to: 40 })
})

it('is what the block states, where it states one', () => {
  expect(cadenceOf({ cadence: { rpm: 70, rampTo: 90 } })).toEqual({ kind: 'turning', from: 70, to: 90 })
  expect(cadenceOf({ cadence: 'legsStill' })).toEqual({ kind: 'still' })
  expect(cadenceOf({ ...inSeconds(60), cadence: { rpm: 85 } }, null)).toEqual({ kind: 'turning', from: 85, to: 85 })
})

it('is unknown off the beat and without one, and still off the bike', () => {
  expect(cadenceOf({ strikesPerBeat: null })).toEqual({ kind: 'unknown' })
  expect(cadenceOf(inSeconds(60), null)).toEqual({ kind: 'unknown' })
  expect(cadenceOf({ ...inSeconds(60), posture: 'offBike' }, null)).toEqual({ kind: 'still' })
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
  expect(cadenceOf({}, { grid, lengthSeconds: 28 })).toEqual({ kind: 'turning', from: 60, to: 80 })

  // An eight half before the change of tempo, half after it; and one past the end of the song, which goes on as it ended.
  const [across, past] = cadencesOf({ grid, lengthSeconds: 28 }, [28, 32, 10]).slice(1)
  expect(across).toMatchObject({ from: expect.closeTo((8 * 60) / 3.5 / 2, 9) })
  expect(past).toEqual({ kind: 'turning', from: 80, to: 80 })
})
