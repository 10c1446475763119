import type { PlaylistSong } from '#plan/sectionsFromPlaylist.ts'

/** A pasted playlist as it was understood. Lines count from 1. */
export interface PlaylistReading {
  songs: PlaylistSong[]
  /** The line each of the songs stands on, in the same order. */
  songLines: number[]
  problems: { line: number; text: string; sentence: string }[]
}

/** Reads a pasted playlist; the app supplies it. */
export type ReadPlaylist = (text: string) => PlaylistReading

/** One line of the table under the paste: a song, or what stands there instead and why it is none. */
export type PlaylistRow = { line: number } & ({ song: PlaylistSong } | { text: string; sentence: string })

/** Songs and problems in the order of their lines. */
export function playlistRows({ songs, songLines, problems }: PlaylistReading): PlaylistRow[] {
  const rows: PlaylistRow[] = [...songs.map((song, index) => ({ line: songLines[index]!, song })), ...problems]
  return rows.sort((a, b) => a.line - b.line)
}

/** The text with one line replaced; lines count from 1. */
export const withLine = (text: string, line: number, replacement: string): string =>
  text
    .split(/\r\n|[\n\r\u2028\u2029]/)
    .with(line - 1, replacement)
    .join('\n')
