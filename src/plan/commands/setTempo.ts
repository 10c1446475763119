import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection } from '#plan/edits.ts'
import type { BeatGrid, Ride, Song } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { gridOfTempo, withOdd } from '#plan/songs/beatGrid.ts'
import { strikesForTempo } from '#plan/songs/sectionsFromPlaylist.ts'
import { withSong } from '#plan/songs/withSong.ts'
import type { Bpm, Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'

/** A steady tempo as it is typed or tapped. */
export interface Tempo {
  /** 20 to 400; another value changes nothing. */
  bpm: Bpm
  /** Seconds from the start of the song to its first beat; the one it has, or 0, unless given. */
  firstBeat?: Seconds
  /** The one it has, or 4, unless given. */
  beatsPerBar?: BeatGrid['beatsPerBar']
}

/**
 * Gives a section's song a steady tempo, or takes its beats away (null). A song that had
 * none is measured in whole eights from then on and gets the strikes per beat that suit the
 * tempo; one that had a tempo keeps its counts. Nothing happens without a song.
 */
export function setTempo(ride: Ride, { sectionId, tempo }: { sectionId: string; tempo: Tempo | null }): Command {
  return makeCommand(labelOf(ride, sectionId, tempo), (before) =>
    editSection(before, sectionId, (section) => (section.song ? withSong(section, withTempo(section.song, tempo)) : section)),
  )
}

function withTempo(song: Song, tempo: Tempo | null): Song {
  const { grid: old, ...rest } = song
  if (tempo === null) return old ? { ...rest, strikesPerBeat: null } : song
  if (!(tempo.bpm > 0)) return song
  const steady = gridOfTempo(tempo.bpm, tempo.firstBeat ?? old?.anchors[0]?.[1] ?? 0, tempo.beatsPerBar ?? old?.beatsPerBar)
  return {
    ...rest,
    // Odd bars are where they are at any tempo.
    grid: old?.odd ? withOdd(steady, old.odd) : steady,
    strikesPerBeat: old ? song.strikesPerBeat : strikesForTempo(tempo.bpm),
  }
}

function labelOf(ride: Ride, sectionId: string, tempo: Tempo | null): Text {
  const song = findSection(ride, sectionId)?.song
  if (!song) return say('commands.nothingTo', { verb: 'change' })
  return tempo ? say('commands.gaveTempo', { title: song.title, bpm: tempo.bpm }) : say('commands.removedTempo', { title: song.title })
}
