import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection } from '#plan/edits.ts'
import type { Ride, Song } from '#plan/model.ts'
import { placeOfSection } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { withSong } from '#plan/songs/withSong.ts'

/**
 * Attaches a song to a section, replaces the one it has, or takes it away (null). Counts
 * stay counts from song to song; from the clock to a song with beats lengths become whole
 * eights, and from beats back to the clock whole seconds at the old tempo.
 */
export function setSong(ride: Ride, { sectionId, song }: { sectionId: string; song: Song | null }): Command {
  return makeCommand(labelOf(ride, sectionId, song), (before) => editSection(before, sectionId, (section) => withSong(section, song)))
}

function labelOf(ride: Ride, sectionId: string, song: Song | null): string {
  const section = findSection(ride, sectionId)
  if (!section) return 'Changed nothing'
  const where = section.title || placeOfSection(ride, section)
  const old = section.song
  if (!song) return old ? `Took ${old.title} from ${where}` : 'Changed nothing'
  if (!old) return `Gave ${where} the song ${song.title}`
  return old.id === song.id ? `Changed the song ${song.title} in ${where}` : `Swapped ${old.title} for ${song.title} in ${where}`
}
