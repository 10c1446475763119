import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection } from '#plan/edits.ts'
import type { Ride, Song } from '#plan/model.ts'
import { sectionPlace } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { withSong } from '#plan/songs/withSong.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Attaches a song to a section, replaces the one it has, or takes it away (null). Counts
 * stay counts from song to song; from the clock to a song with beats lengths become whole
 * eights, and from beats back to the clock whole seconds at the old tempo.
 */
export function setSong(ride: Ride, { sectionId, song }: { sectionId: string; song: Song | null }): Command {
  return makeCommand(labelOf(ride, sectionId, song), (before) => editSection(before, sectionId, (section) => withSong(section, song)))
}

function labelOf(ride: Ride, sectionId: string, song: Song | null): Text {
  const section = findSection(ride, sectionId)
  if (!section) return say('commands.nothingTo', { verb: 'change' })
  const where = section.title || sectionPlace(ride, section)
  const old = section.song
  if (!song) return old ? say('commands.removedSong', { title: old.title, where }) : say('commands.nothingTo', { verb: 'change' })
  const { title } = song
  if (!old) return say('commands.gaveSong', { title, where })
  return old.id === song.id ? say('commands.changedSong', { title, where }) : say('commands.replacedSong', { old: old.title, title, where })
}
