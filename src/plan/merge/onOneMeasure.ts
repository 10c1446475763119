import { editSections } from '#plan/edits.ts'
import { isCounted, type Ride, type Section, type Song } from '#plan/model.ts'
import { withSong } from '#plan/songs/withSong.ts'

/** The songs of sections, by section id; a section not in it keeps its own. */
export type Songs = ReadonlyMap<string, Song | null>

/**
 * The ride with its lengths as other songs measure them: where a section is counted and
 * would not be with the song given for it, or the other way round, it is converted as the
 * command that changes a song does. A ride in which somebody gave a song a tempo then
 * differs from its base in no length that nobody touched.
 */
export function measuredBy(ride: Ride, songs: Songs): Ride {
  return editSections(ride, (section) => {
    const song = songs.get(section.id)
    return song === undefined || isCounted(section) === isCounted({ ...section, song }) ? section : withSong(section, song)
  })
}

/** The songs a ride has. */
export const songsOf = (sections: readonly Section[]): Songs => new Map(sections.map(({ id, song }) => [id, song ?? null]))
