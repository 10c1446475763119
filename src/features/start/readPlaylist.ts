import type { PlaylistSong } from '#plan/songs/sectionsFromPlaylist.ts'
import type { Text } from '#words/said.ts'

/** A pasted playlist as it was understood. Lines count from 1. */
interface PlaylistReading {
  songs: PlaylistSong[]
  /** The line each of the songs stands on, in the same order. */
  songLines: number[]
  /** Lines are numbers of entries: the text has no line of its own for each. */
  numbered?: true
  /** Nothing but their order told titles from artists. */
  guessed?: true
  problems: { line: number; text: Text; sentence: Text }[]
}

/** What a pasted line begins with. */
export type FirstOfLine = 'title' | 'artist'

/** Reads a pasted playlist; the app supplies it. */
export type ReadPlaylist = (text: string, first: FirstOfLine) => PlaylistReading

/** One line of the table under the paste: the song on it, or why there is none. */
export interface PlaylistRow {
  line: number
  text: Text
  song?: PlaylistSong
  sentence?: Text
  /** It cannot be written in by itself. */
  fixed?: true
}

/**
 * Songs and problems in the order of their lines. A line of `kept` has its row also when it is
 * empty by now: it is being written in.
 */
export function playlistRows(text: string, reading: PlaylistReading, kept: ReadonlySet<number>): PlaylistRow[] {
  const { songs, songLines, problems } = reading
  if (reading.numbered) {
    const read = songs.map((song, index): PlaylistRow => ({ line: songLines[index]!, text: song.title, song }))
    return [...read, ...problems.map((problem): PlaylistRow => ({ ...problem, fixed: true }))].sort((a, b) => a.line - b.line)
  }
  const songOn = new Map(songs.map((song, index) => [songLines[index]!, song]))
  const sentenceOn = new Map(problems.map(({ line, sentence }) => [line, sentence]))
  return linesOf(text).flatMap((words, index) => {
    const row: PlaylistRow = { line: index + 1, text: words, song: songOn.get(index + 1), sentence: sentenceOn.get(index + 1) }
    return row.song || row.sentence || kept.has(row.line) ? row : []
  })
}

/** The text with one line replaced; lines count from 1. */
export const withLine = (text: string, line: number, replacement: string): string =>
  linesOf(text)
    .with(line - 1, replacement)
    .join('\n')

const linesOf = (text: string): string[] => text.split(/\r\n|[\n\r\u2028\u2029]/)
