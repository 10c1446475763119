import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection } from '#plan/edits.ts'
import type { Ride, Song } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import type { Counts } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'

/** Writes a section mark into a section's song, in place of one on the same count. Nothing happens before the song's first beat. */
export function markSong(ride: Ride, { sectionId, count, label }: { sectionId: string; count: Counts; label: string }): Command {
  return onSong(
    ride,
    sectionId,
    (title) => say('commands.markedSong', { label, title }),
    (song) => {
      if (!(count >= 0)) return song
      const others = (song.marks ?? []).filter((mark) => mark.count !== count)
      return { ...song, marks: [...others, { count, label }].sort((a, b) => a.count - b.count) }
    },
  )
}

/** Keeps a stretch of a section's song free of speech; stretches that touch become one. */
export function quietSong(ride: Ride, { sectionId, from, to }: { sectionId: string; from: Counts; to: Counts }): Command {
  return onSong(
    ride,
    sectionId,
    (title) => say('commands.addedNoTalk', { title }),
    (song) => {
      if (!(from >= 0 && to > from)) return song
      const quiet = song.quiet ?? []
      const near = quiet.filter((other) => other.from <= to && other.to >= from)
      const whole = { from: Math.min(from, ...near.map((other) => other.from)), to: Math.max(to, ...near.map((other) => other.to)) }
      return { ...song, quiet: [...quiet.filter((other) => !near.includes(other)), whole].sort((a, b) => a.from - b.from) }
    },
  )
}

function onSong(ride: Ride, sectionId: string, label: (title: string) => Text, change: (song: Song) => Song): Command {
  const title = findSection(ride, sectionId)?.song?.title
  return makeCommand(title === undefined ? say('commands.nothingTo', { verb: 'change' }) : label(title), (before) =>
    editSection(before, sectionId, (section) => {
      if (!section.song?.grid) return section
      const song = change(section.song)
      return song === section.song ? section : { ...section, song }
    }),
  )
}
