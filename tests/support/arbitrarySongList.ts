import fc from 'fast-check'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { Ride, Song } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { countedIds } from './smallRide.ts'

const LABELS = ['intro', 'verse', 'chorus', 'break', 'drop', 'outro']

const someSong = fc
  .record({
    bpm: fc.option(
      fc.integer({ min: 600, max: 1900 }).map((tenths) => tenths / 10),
      { freq: 8 },
    ),
    lengthSeconds: fc.integer({ min: 130, max: 320 }),
    beatsPerBar: fc.constantFrom(4 as const, 4 as const, 4 as const, 3 as const),
    marks: fc.option(
      fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.constantFrom(...LABELS)), {
        minLength: 2,
        maxLength: 6,
        selector: ([at]) => at,
      }),
      { freq: 2 },
    ),
  })
  .map(({ bpm, lengthSeconds, beatsPerBar, marks }): Omit<Song, 'id' | 'title'> => {
    const grid = bpm === null ? undefined : gridOfTempo(bpm, 0, beatsPerBar)
    return {
      ...(grid && { grid }),
      lengthSeconds,
      strikesPerBeat: grid ? 1 : null,
      ...(grid && marks && { marks: marks.map(([at, label]) => ({ count: at * 8, label })).sort((a, b) => a.count - b.count) }),
    }
  })

/** Two fifths of so many seconds, less a phrase, are more than any list here is too long by. */
const LONG_ENOUGH = 240

/** Rides of songs with nothing planned: any tempos and lengths, as many as about fill the slot, at any level, on either typical bike. */
export const arbitrarySongList: fc.Arbitrary<Ride> = fc
  .record({
    songs: fc.array(someSong, { minLength: 3, maxLength: 20, size: 'max' }),
    level: fc.constantFrom('beginner' as const, 'mixed' as const, 'advanced' as const),
    room: fc.constantFrom(20, 0, -60),
    bike: fc.constantFrom(DEFAULT_BIKE, LEVELS_BIKE),
    briefing: fc.constantFrom(0, 150),
    lead: fc.constantFrom(0, 2, 6),
  })
  .map(({ songs, level, room, bike, briefing, lead }) => {
    const newId = countedIds()
    const seconds = briefing + songs.reduce((sum, song) => sum + song.lengthSeconds + lead, 0)
    // Only songs with beats end earlier, by two fifths at most: a list without a long one of them cannot be made to fit.
    const canEndEarlier = songs.some(({ grid, lengthSeconds }) => grid && lengthSeconds >= LONG_ENOUGH)
    const slotMinutes = Math.min(180, Math.max(5, Math.ceil((seconds + (canEndEarlier ? room : Math.max(0, room))) / 60)))
    return {
      ...blankRide({ newId, title: 'songs', slotMinutes, level, bike }),
      briefingSeconds: briefing,
      sections: songs.map((song, i) => ({
        id: newId(),
        song: { ...song, id: newId(), title: `song ${i + 1}` },
        leadInSeconds: lead,
        blocks: [],
      })),
    }
  })
