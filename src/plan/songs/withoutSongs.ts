import { mapSame } from '#plan/edits.ts'
import { type Ride, type Song, tempoOf } from '#plan/model.ts'
import type { Bpm, Seconds } from '#units/units.ts'
import { withSong } from './withSong.ts'

/**
 * The ride with a place without a song for every song: its blocks by the clock at the song's tempo.
 *
 * @param noteOf what is noted of a song in its place, so that another can be found for it
 */
export function withoutSongs(ride: Ride, noteOf: (song: { lengthSeconds: Seconds; bpm?: Bpm }) => string): Ride {
  const sections = mapSame(ride.sections, (section) => {
    const { song } = section
    if (!song) return section
    const note = noteOf(aboutOf(song))
    return { ...withSong(section, null), notes: section.notes ? `${section.notes}\n${note}` : note }
  })
  return sections === ride.sections ? ride : { ...ride, sections }
}

const aboutOf = ({ lengthSeconds, grid }: Song) => ({ lengthSeconds, ...(grid && { bpm: tempoOf(grid) }) })
