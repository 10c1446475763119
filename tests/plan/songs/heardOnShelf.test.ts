import { describe, expect, it } from 'vitest'
import { tempoOf } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { heardOnShelf } from '#plan/songs/heardOnShelf.ts'
import type { Beats, HeardSong } from '#plan/songs/heardSong.ts'
import { linkedSong } from '#plan/songs/linkedSong.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import { aSong } from '#tests/support/smallRide.ts'

const beatsAt = (bpm: number): Beats => ({
  bpm,
  beats: [0.5, 0.5 + 60 / bpm],
  downbeats: [0.5],
  eights: [0.5],
  beatsPerBar: 4,
  firstBeat: 0.5,
  confidence: 0.9,
  drifts: [],
  steady: true,
})
const heard = (change: Partial<HeardSong> = {}): HeardSong => ({
  title: 'Low Tide',
  artist: 'Salt Lantern',
  fingerprint: 'print',
  lengthSeconds: 200,
  sound: { id: 'print', lengthSeconds: 200, peaks: new Uint8Array(), loudness: new Float32Array() },
  beats: beatsAt(128),
  ...change,
})
const kept = (id: string, change: Parameters<typeof aSong>[1], energy?: ShelfSong['energy']): ShelfSong => ({
  id,
  song: { ...aSong(id, change), id },
  ...(energy && { energy }),
})
const newId = () => 'new'

describe('a heard file on the shelf', () => {
  it('is a new song under the shelf’s own id where nothing is called so', () => {
    expect(heardOnShelf(heard(), [kept('a', { title: 'Other' })], newId)).toMatchObject({
      id: 'new',
      song: { id: 'new', title: 'Low Tide', artist: 'Salt Lantern', fingerprint: 'print', lengthSeconds: 200 },
    })
  })

  it('is the song it belongs to, whatever that is called, with the beats as its leader put them right', () => {
    const mine = kept('mine', { title: 'My name for it', fingerprint: 'print', grid: gridOfTempo(64, 0.9), quiet: [{ from: 0, to: 8 }] }, 5)
    const found = heardOnShelf(heard(), [kept('x', { title: 'Low Tide', artist: 'Salt Lantern' }), mine], newId)
    expect(found).toEqual({ ...mine, song: { ...mine.song, artist: 'Salt Lantern' } })
    expect(heardOnShelf(heard(), [mine], newId, true).song.grid!.anchors[0]).toEqual([0, 0.5])
  })

  it('gives a song that is called so its beats, and keeps energy, marks and title', () => {
    const listed = kept(
      'listed',
      { title: 'LOW tide', artist: 'Salt  Lantern', grid: undefined, marks: [{ count: 8, label: 'chorus' }] },
      4,
    )
    const { id, energy, song } = heardOnShelf(heard(), [listed], newId)
    expect({ id, energy, title: song.title, marks: song.marks }).toEqual({
      id: 'listed',
      energy: 4,
      title: 'LOW tide',
      marks: listed.song.marks,
    })
    expect(tempoOf(song.grid!)).toBeCloseTo(128, 6)
    expect(song.fingerprint).toBe('print')
  })

  it('reads its beat at the half or double that its leader wrote', () => {
    const slow = heardOnShelf(heard(), [kept('a', { title: 'Low Tide', artist: 'Salt Lantern', grid: gridOfTempo(63) })], newId)
    expect(tempoOf(slow.song.grid!)).toBeCloseTo(64, 6)
    const other = heardOnShelf(heard(), [kept('a', { title: 'Low Tide', artist: 'Salt Lantern', grid: gridOfTempo(90) })], newId)
    expect(tempoOf(other.song.grid!)).toBeCloseTo(128, 6)
  })

  it('meets a song whose artist is not said, unless two are called so', () => {
    const one = kept('one', { title: 'Low Tide', artist: undefined })
    expect(heardOnShelf(heard(), [one], newId)).toMatchObject({ id: 'one', song: { artist: 'Salt Lantern' } })
    const two = kept('two', { title: 'low tide', artist: undefined })
    expect(heardOnShelf(heard(), [one, two], newId).id).toBe('new')
    const another = kept('another', { title: 'Low Tide', artist: 'Brass Otter' })
    expect(heardOnShelf(heard(), [another], newId).id).toBe('new')
  })

  it('stays apart from another recording of the name, and takes the place of another file of the same one', () => {
    const longer = kept('longer', { title: 'Low Tide', artist: 'Salt Lantern', fingerprint: 'extended', lengthSeconds: 310 })
    expect(heardOnShelf(heard(), [longer], newId).id).toBe('new')
    const recoded = kept('recoded', { title: 'Low Tide', artist: 'Salt Lantern', fingerprint: 'flac', lengthSeconds: 200.05 })
    const { id, song } = heardOnShelf(heard(), [recoded], newId)
    expect([id, song.fingerprint, song.grid]).toEqual(['recoded', 'print', recoded.song.grid])
  })
})

describe('a ride’s song linked to a file the shelf knows', () => {
  const shelf = kept('s', { fingerprint: 'print', grid: gridOfTempo(128, 0.4), lengthSeconds: 200, marks: [{ count: 8, label: 'chorus' }] })

  it('takes its beats and length, and keeps name, strikes and marks of its own', () => {
    const own = aSong('own', { title: 'Mine', strikesPerBeat: 2, marks: [{ count: 0, label: 'intro' }] })
    expect(linkedSong(shelf, own, newId)).toEqual({
      ...own,
      grid: shelf.song.grid,
      lengthSeconds: 200,
      fingerprint: 'print',
    })
    expect(linkedSong(shelf, null, newId)).toEqual({ ...shelf.song, id: 'new' })
  })

  it('is read at the half or double nearest to its own tempo, marks with it', () => {
    const own = aSong('own', { grid: gridOfTempo(70), marks: undefined })
    const linked = linkedSong(shelf, own, newId)
    expect(tempoOf(linked.grid!)).toBeCloseTo(64, 9)
    expect(linked.grid!.anchors[0]).toEqual([0, 0.4])
    expect(linked.marks).toEqual([{ count: 4, label: 'chorus' }])
    expect(linked.strikesPerBeat).toBe(own.strikesPerBeat)
  })

  it('stays the very same where it is linked already', () => {
    const own = aSong('own', { fingerprint: 'print' })
    expect(linkedSong(shelf, own, newId)).toBe(own)
  })
})
