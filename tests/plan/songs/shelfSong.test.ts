import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { tempoOf } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import {
  findSongs,
  forRide,
  listOnShelf,
  onShelf,
  readShelfSong,
  ridesBySong,
  type ShelfSong,
  songKey,
  writeShelfSong,
} from '#plan/songs/shelfSong.ts'
import { aSection, aSong, countedIds, smallRide } from '#tests/support/smallRide.ts'

const kept = (id: string, change: Parameters<typeof aSong>[1] = {}, energy?: ShelfSong['energy']): ShelfSong => ({
  id,
  song: aSong(id, change),
  ...(energy && { energy }),
})

describe('a kept song', () => {
  it('comes back from its text as it was, and nothing else does', () => {
    const song = kept('a', { clean: true, marks: [{ count: 64, label: 'chorus' }] }, 4)
    expect(readShelfSong(writeShelfSong(song))).toEqual(song)
    const falling = kept('b', {
      grid: {
        anchors: [
          [0, 5],
          [8, 1],
        ],
        beatsPerBar: 4,
      },
    })
    for (const text of ['', '{}', '[]', writeShelfSong(song).replace('"shelfSong":2', '"shelfSong":3'), writeShelfSong(falling)]) {
      expect(readShelfSong(text)).toBeNull()
    }
    fc.assert(fc.property(fc.json(), (text) => void expect(readShelfSong(text)).toBeNull()))
  })

  it('is the same song however it is written', () => {
    expect(songKey({ title: ' Café  Late', artist: 'SALT' })).toBe(songKey({ title: 'cafe late', artist: 'Salt' }))
    expect(songKey({ title: 'Late' })).not.toBe(songKey({ title: 'Late', artist: 'Salt' }))
  })

  it('takes the place of itself and keeps its energy', () => {
    const shelf = [kept('a', { title: 'Low Tide' }, 3)]
    const again = onShelf(aSong('of the ride', { title: 'low tide', lengthSeconds: 200 }), shelf, countedIds())
    expect(again).toMatchObject({ id: 'a', energy: 3, song: { id: 'a', lengthSeconds: 200 } })
    expect(forRide(again, countedIds('mine')).id).toBe('mine1')
  })

  it('keeps what a list does not know better', () => {
    const shelf = [kept('a', { title: 'Low Tide', grid: gridOfTempo(127.64) })]
    const [again, other] = listOnShelf(
      [{ title: 'Low Tide', bpm: 128, lengthSeconds: 190 }, { title: 'Other' }, { title: 'other' }],
      shelf,
      countedIds(),
    )
    expect(tempoOf(again!.song.grid!)).toBeCloseTo(127.64)
    expect(again!.song.lengthSeconds).toBe(190)
    expect(other!.song.title).toBe('other')
  })

  it('is found by words of title and artist, and sorted with the unknown last', () => {
    const shelf = [
      kept('c', { title: 'Coral', artist: 'Salt', grid: gridOfTempo(140) }),
      kept('a', { title: 'Amber', artist: 'Tin Kites', grid: undefined }, 2),
      kept('b', { title: 'Brick', grid: gridOfTempo(90) }, 5),
    ]
    const titles = (search: string, order: Parameters<typeof findSongs>[2]) => findSongs(shelf, search, order).map(({ song }) => song.title)
    expect(titles('', 'title')).toEqual(['Amber', 'Brick', 'Coral'])
    expect(titles('', 'tempo')).toEqual(['Brick', 'Coral', 'Amber'])
    expect(titles('', 'energy')).toEqual(['Brick', 'Amber', 'Coral'])
    expect(titles('kites amb', 'title')).toEqual(['Amber'])
  })

  it('knows the rides that hold it', () => {
    const ride = {
      ...smallRide(),
      title: 'Tuesday',
      sections: [aSection('s', { song: aSong('x', { title: 'Low Tide' }) }), aSection('t', { song: aSong('y', { title: 'low tide' }) })],
    }
    expect(ridesBySong([ride]).get(songKey({ title: 'LOW TIDE' }))).toEqual(['Tuesday'])
  })
})
