import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import type { NewId } from '#plan/copies.ts'
import { editSections } from '#plan/edits.ts'
import type { Ride, Section } from '#plan/model.ts'
import { linkedSong } from '#plan/songs/linkedSong.ts'
import { type ShelfSong, songKey } from '#plan/songs/shelfSong.ts'
import { withSong } from '#plan/songs/withSong.ts'
import { say } from '#words/said.ts'

/**
 * Gives every song of a ride that belongs to no file what the shelf heard in the file of the song of that name: length,
 * first beat, tempo and bars. Counts stay counts; a song without beats gets its blocks in whole eights.
 */
export function linkSongs(ride: Ride, { shelf, newId }: { shelf: readonly ShelfSong[]; newId: NewId }): Command {
  const files = filesByName(shelf)
  const count = songsToLink(ride, shelf)
  return makeCommand(count === 0 ? say('commands.nothingTo', { verb: 'change' }) : say('commands.linkedSongs', { count }), (before) =>
    editSections(before, (section) => {
      const kept = fileFor(section, files)
      return kept ? withSong(section, linkedSong(kept, section.song, newId)) : section
    }),
  )
}

/** How many songs of a ride belong to no file yet, and could have one from the shelf. */
export function songsToLink(ride: Ride, shelf: readonly ShelfSong[]): number {
  const files = filesByName(shelf)
  return ride.sections.filter((section) => fileFor(section, files)).length
}

const filesByName = (shelf: readonly ShelfSong[]): Map<string, ShelfSong> =>
  new Map(shelf.flatMap((kept) => (kept.song.fingerprint && kept.song.grid ? [[songKey(kept.song), kept] as const] : [])))

const fileFor = ({ song }: Section, files: ReadonlyMap<string, ShelfSong>): ShelfSong | undefined =>
  song && song.fingerprint === undefined ? files.get(songKey(song)) : undefined
