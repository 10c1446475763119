import type { NewId } from '#plan/copies.ts'
import type { Section, Song, StrikesPerBeat } from '#plan/model.ts'
import type { Bpm, Rpm, Seconds } from '#units/units.ts'
import { gridOfTempo } from './beatGrid.ts'
import { sectionsFromSongs } from './sectionsFromSongs.ts'

/** One line of a playlist. */
export interface PlaylistSong {
  title: string
  artist?: string
  lengthSeconds?: Seconds
  bpm?: Bpm
}

/** Length of a song whose length is not known: three and a half minutes (common practice). */
export const USUAL_SONG: Seconds = 210

/**
 * Sections of the songs of a list. A song with a tempo gets a beat grid and is measured in whole
 * eights; one without is measured in seconds.
 */
export const sectionsFromPlaylist = (songs: readonly PlaylistSong[], newId: NewId): Section[] =>
  sectionsFromSongs(
    songs.map((entry) => songOf(entry, newId)),
    newId,
  )

/**
 * Strikes per beat that bring the cadence into 60–110 rev/min (the seated window of common
 * practice), or nearest to it where none does; of two that fit, the one nearer its middle.
 */
export function strikesForTempo(bpm: Bpm): StrikesPerBeat {
  const misfit = (strikes: number): [outside: Rpm, offMiddle: Rpm] => {
    const rpm = (bpm * strikes) / 2
    return [Math.max(0, SLOWEST - rpm, rpm - FASTEST), Math.abs(rpm - (SLOWEST + FASTEST) / 2)]
  }
  const byFit = ([1, 2, 0.5] as const).toSorted((a, b) => {
    const [outsideA, middleA] = misfit(a)
    const [outsideB, middleB] = misfit(b)
    return outsideA - outsideB || middleA - middleB
  })
  return byFit[0]!
}

const SLOWEST: Rpm = 60
const FASTEST: Rpm = 110

function songOf({ title, artist, lengthSeconds, bpm }: PlaylistSong, newId: NewId): Song {
  const known = bpm !== undefined && bpm > 0
  return {
    id: newId(),
    title,
    ...(artist && { artist }),
    ...(known && { grid: gridOfTempo(bpm) }),
    lengthSeconds: lengthSeconds !== undefined && lengthSeconds > 0 ? lengthSeconds : USUAL_SONG,
    strikesPerBeat: known ? strikesForTempo(bpm) : null,
  }
}
