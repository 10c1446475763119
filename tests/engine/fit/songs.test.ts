import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { energyWanted } from '#engine/fit/energyWanted.ts'
import { rankSongs } from '#engine/fit/rankSongs.ts'
import { replaceSong } from '#engine/fit/replaceSong.ts'
import { sayRank } from '#engine/fit/sayRank.ts'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
import type { Song } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const ride = demoRide('spark')
const pushes = ride.sections.find(({ id }) => id === 's4')!

const song = (id: string, bpm: number, eights: number, extra: Partial<Song> = {}): Song => ({
  id,
  title: id,
  grid: gridOfTempo(bpm),
  lengthSeconds: (eights * 8 * 60) / bpm,
  strikesPerBeat: 1,
  ...extra,
})

describe('replacing a song', () => {
  it('says what falls off the end, how the time moves and what the legs do', () => {
    const swap = replaceSong(ride, 's4', song('shorter', 176, 60))!
    expect(swap.fallen.map(({ name, counts, of }) => [name, counts / 8, of / 8])).toEqual([
      ['push 3', 4, 8],
      ['recover', 20, 20],
    ])
    expect(swap.sentences.map(told)).toEqual([
      'The last 4 eights of “push 3” fall off the end.',
      'All of “recover” falls off the end (20 eights).',
      'The song gets 10 s longer.',
      'Cadence goes from 92 to 88 rpm.',
    ])
    const report = computeRide(swap.command.apply(ride)).sections[3]!
    expect(report.beyond).toBe(24 * 8)
    // Counts stay: every block is as long in counts as before.
    const counts = (one: typeof ride) => computeRide(one).blocks.map(({ countFrom, countTo }) => countTo! - countFrom!)
    expect(counts(swap.command.apply(ride))).toEqual(counts(ride))
  })

  it('says what a longer song leaves open', () => {
    const swap = replaceSong(ride, 's4', song('longer', 184, 100))!
    expect(swap).toMatchObject({ fallen: [], open: 16 * 8 })
    expect(swap.sentences.map(told)).toEqual(['16 eights of the song stay empty.', 'The song gets 42 s longer.'])
  })
})

describe('songs from the shelf', () => {
  it('ranks by legs first, then length, and takes half or double time for what it is', () => {
    const ranked = rankSongs(pushes, [song('slow', 120, 84), song('double', 92, 84), song('near', 182, 80), song('long', 184, 140)])
    expect(ranked.map((one) => one.song.id)).toEqual(['double', 'near', 'long', 'slow'])
    expect(ranked[0]).toMatchObject({ fit: 1, strikesPerBeat: 2 })
  })

  it('leaves out songs without beats, and those not clean where it matters', () => {
    const songs = [song('clean', 184, 84, { clean: true }), song('rough', 184, 84), { ...song('none', 184, 84), grid: undefined }]
    expect(
      rankSongs(pushes, songs)
        .map((one) => one.song.id)
        .sort(),
    ).toEqual(['clean', 'rough'])
    expect(rankSongs(pushes, songs, { cleanOnly: true }).map((one) => one.song.id)).toEqual(['clean'])
  })

  it('prefers what was not played lately, and the same order of verse and chorus', () => {
    const marks = ['verse', 'chorus', 'verse', 'chorus'].map((label, i) => ({ count: i * 64, label }))
    const marked = { ...pushes, song: { ...pushes.song!, marks } }
    const songs = [
      song('old', 184, 84, { marks }),
      song('other', 184, 84, { marks: [...marks].reverse().map((mark, i) => ({ ...mark, count: i * 64 })) }),
      song('fresh', 184, 84, { marks }),
    ]
    expect(rankSongs(marked, songs, { recent: new Set(['old']) }).map((one) => one.song.id)).toEqual(['fresh', 'old', 'other'])
  })

  it('puts the drive that is wanted first among equals, and says so', () => {
    const songs = [song('calm', 184, 84), song('driving', 184, 84), song('unknown', 184, 84)]
    const energies = new Map<string, Energy>([
      ['calm', 2],
      ['driving', 5],
    ])
    const ranked = rankSongs(pushes, songs, { energies, wanted: energyWanted(pushes.blocks), recent: new Set(['unknown']) })
    expect(ranked.map((one) => one.song.id)).toEqual(['driving', 'unknown', 'calm'])
    expect(ranked.map((one) => told(sayRank(pushes, one)))).toEqual([
      'the same cadence, same length, same energy',
      'the same cadence, same length, played lately',
      'the same cadence, same length, less energy',
    ])
  })

  it('goes by the terrain and the time of the blocks where there is no song yet', () => {
    const bare = aSection('bare', { blocks: [aBlock('h', { terrain: 'hill', length: { seconds: 200 }, effort: { from: 5, to: 6 } })] })
    const eights = (bpm: number) => 200 / ((8 * 60) / bpm)
    const songs = [song('flat', 176, eights(176)), song('hill', 136, eights(136)), song('short', 68, eights(68) - 8)]
    const ranked = rankSongs(bare, songs)
    expect(ranked.map((one) => [one.song.id, one.strikesPerBeat])).toEqual([
      ['hill', 1],
      ['short', 2],
      ['flat', 1],
    ])
    expect(ranked.map((one) => told(sayRank(bare, one)))).toEqual([
      '68 rpm, right for its terrain, same length',
      '68 rpm, right for its terrain, 8 eights shorter',
      '88 rpm, 10 too fast for its terrain, same length',
    ])
    expect(energyWanted(bare.blocks)).toBe(3)
    expect(energyWanted([])).toBeUndefined()
  })
})
