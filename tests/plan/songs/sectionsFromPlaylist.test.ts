import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { tempoOf } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { type PlaylistSong, sectionsFromPlaylist, strikesForTempo, USUAL_SONG } from '#plan/songs/sectionsFromPlaylist.ts'
import { countedIds } from '#tests/support/smallRide.ts'

const SONGS: PlaylistSong[] = [
  { title: 'Glass Tram', artist: 'Orbit Pantry', lengthSeconds: 192, bpm: 180 },
  { title: 'Thimble Ocean', lengthSeconds: 161.4, bpm: 84 },
  { title: 'Iron Lullaby', lengthSeconds: 230 },
  { title: 'Kite Factory', bpm: 176.5 },
  { title: 'Chalk Cathedral' },
]
const rideOf = (songs: PlaylistSong[]) => {
  const newId = countedIds()
  return { ...blankRide({ newId, title: 'playlist' }), sections: sectionsFromPlaylist(songs, newId) }
}

describe('strikesForTempo', () => {
  it.each([
    [60, 2],
    [84, 2],
    [110, 2],
    [112, 2],
    [118, 1],
    [120, 1],
    [172, 1],
    [220, 1],
    [240, 0.5],
    [300, 0.5],
    [40, 2],
    [390, 0.5],
  ])('%d bpm is ridden at %d strikes a beat', (bpm, strikes) => {
    expect(strikesForTempo(bpm)).toBe(strikes)
  })
})

describe('sectionsFromPlaylist', () => {
  const ride = rideOf(SONGS)

  it('makes a ride that opens, each song open from its first count to be filled from the front', () => {
    expect(parseRide(ride)).toEqual({ ok: true, ride })
    const { spans, overall } = computeRide(ride)
    expect(spans.map(({ kind }) => kind)).toEqual([
      'openTail',
      ...Array.from({ length: SONGS.length - 1 }, () => ['leadIn', 'openTail']).flat(),
    ])
    expect(overall.total).toBe(spans.at(-1)!.to)
  })

  it('measures songs with a tempo in whole eights, others in seconds', () => {
    // 192 s at 180 are 576 counts, 72 eights; 161.4 s at 84 are 225.96 counts, 28 eights; 210 s at 176.5 are 617.75, 77.
    const { sections } = computeRide(ride)
    expect(sections.map(({ counts }) => counts?.total)).toEqual([72 * 8, 28 * 8, undefined, 77 * 8, undefined])
    expect(sections[2]!.to - sections[2]!.one).toBeCloseTo(230, 9)
    expect(sections[4]!.to - sections[4]!.one).toBeCloseTo(USUAL_SONG, 9)
    expect(ride.sections.map(({ song }) => song!.grid && tempoOf(song!.grid))).toEqual([180, 84, undefined, 176.5, undefined])
    expect(ride.sections.map(({ song }) => song!.strikesPerBeat)).toEqual([1, 2, null, 1, null])
    expect(ride.sections[0]!.song).toMatchObject({ title: 'Glass Tram', artist: 'Orbit Pantry', lengthSeconds: 192 })
  })

  it('leaves the usual two seconds between songs, and none before the first', () => {
    expect(ride.sections.map(({ leadInSeconds }) => leadInSeconds)).toEqual([0, 2, 2, 2, 2])
  })

  it('makes a ride that opens of any playlist', () => {
    const entry = fc.record(
      {
        title: fc.string({ maxLength: 40 }),
        lengthSeconds: fc.double({ min: 0.2, max: 3600, noNaN: true }),
        bpm: fc.double({ min: 20, max: 400, noNaN: true }),
      },
      { requiredKeys: ['title'] },
    )
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 12 }), (songs) => {
        const made = rideOf(songs)
        expect(parseRide(made)).toEqual({ ok: true, ride: made })
      }),
    )
  })
})
