import { expect, it } from 'vitest'
import { tempoOf } from '#plan/model.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import type { Beats } from '#plan/songs/heardSong.ts'
import { songHeard } from '#plan/songs/songHeard.ts'
import { aSong } from '#tests/support/smallRide.ts'

const BEATS: Beats = {
  bpm: 127.6184,
  beats: [0.2, 0.67, 1.14, 1.61],
  downbeats: [0.67],
  eights: [],
  beatsPerBar: 4,
  firstBeat: 0.2,
  confidence: 0.9,
  drifts: [],
  steady: true,
}
const sound = { id: 'print', lengthSeconds: 200.126, peaks: new Uint8Array(), loudness: new Float32Array() }
const heard = { title: 'Lamp', artist: 'Wick', lengthSeconds: 200.126, fingerprint: 'print', sound, beats: BEATS }

it('a new song is called as its file is, and counts from the first one of a bar at the tempo that was heard', () => {
  const song = songHeard(heard, null, () => 'new')
  expect(song).toMatchObject({ id: 'new', title: 'Lamp', artist: 'Wick', lengthSeconds: 200.13, strikesPerBeat: 1, fingerprint: 'print' })
  expect(tempoOf(song.grid!)).toBeCloseTo(127.618, 3)
  expect(secondAt(song.grid!, 0)).toBe(0.67)
  // After four minutes the tempo, kept to a thousandth, is off by less than a millisecond and a half.
  expect(Math.abs((500 * 60) / 127.6184 + 0.67 - secondAt(song.grid!, 500))).toBeLessThan(0.0015)
})

it('a song that is there keeps its title, its strikes and its marks', () => {
  const old = aSong('old', { title: 'Mine', strikesPerBeat: 2, marks: [{ count: 8, label: 'chorus' }] })
  const song = songHeard(heard, old, () => 'new')
  expect(song).toMatchObject({ id: 'old', title: 'Mine', strikesPerBeat: 2, marks: old.marks, fingerprint: 'print' })
  expect(song.artist).toBe(old.artist)
})

it('count 0 is on the first that starts an eight, whichever bar that is', () => {
  const beats = Array.from({ length: 16 }, (_, n) => 0.2 + n * 0.5)
  const eighth: Beats = { ...BEATS, bpm: 120, beats, downbeats: [0.7, 2.7, 4.7, 6.7], eights: [2.7, 6.7] }
  expect(secondAt(songHeard({ ...heard, beats: eighth }, null, () => 'new').grid!, 0)).toBe(2.7)
  const loose = songHeard({ ...heard, beats: { ...eighth, steady: false } }, null, () => 'new')
  expect(loose.grid!.anchors[0]).toEqual([0, 2.7])
})

it('beats that follow a changing tempo are kept one by one', () => {
  const { grid } = songHeard({ ...heard, beats: { ...BEATS, steady: false } }, null, () => 'new')
  expect(grid!.anchors).toEqual([
    [0, 0.67],
    [1, 1.14],
    [2, 1.61],
  ])
})

it('a beat that nobody plays among those that follow the music is over, and no slower tempo', () => {
  const late = (n: number) => (n % 3) * 0.004
  const beats = Array.from({ length: 40 }, (_, n) => 0.5 + (n < 20 ? n : n + 2) * 0.5 + late(n))
  const { grid } = songHeard({ ...heard, beats: { ...BEATS, beats, downbeats: [0.5], steady: false } }, null, () => 'new')
  expect(grid!.odd).toEqual([[20, 2]])
  expect(tempoOf(grid!)).toBeCloseTo(120, 0)
})

it('six eighths are counted in their two beats, and a file without a beat gives its length alone', () => {
  expect(songHeard({ ...heard, beats: { ...BEATS, beatsPerBar: 6 } }, null, () => 'new').grid!.beatsPerBar).toBe(4)
  const bare = songHeard({ ...heard, beats: null }, null, () => 'new')
  expect(bare.grid).toBeUndefined()
  expect(bare.lengthSeconds).toBe(200.13)
})
