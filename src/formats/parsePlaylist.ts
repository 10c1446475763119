import type { PlaylistSong } from '#plan/songs/sectionsFromPlaylist.ts'
import { say, type Text } from '#words/said.ts'
import { type Header, readHeader } from './playlist/readHeader.ts'
import { recordsOf } from './playlist/recordsOf.ts'
import { type FirstOfLine, songOfLine } from './playlist/songOfLine.ts'
import { songOfRow } from './playlist/songOfRow.ts'

/** A line that did not become a song; lines count from 1. */
interface LineProblem {
  line: number
  text: Text
  sentence: Text
}

export interface Playlist {
  songs: PlaylistSong[]
  /** The line each of the songs begins on, in the same order. */
  songLines: number[]
  /** Lines are numbers of entries: the text has no line of its own for each. */
  numbered?: true
  /** Nothing but their order told titles from artists: `first` may turn them round. */
  guessed?: true
  problems: LineProblem[]
}

/** Most lines read; more than a year of classes. */
const MOST_LINES = 2_000

/** Longest line looked at; a longer one is a problem of its own. */
const LONGEST_LINE = 1_000

/**
 * Reads a pasted playlist: one song a line with title, artist, length and tempo, as people
 * and players write them, or a table with named columns (see `songOfLine`, `readHeader`).
 *
 * @param first what a line without named columns begins with
 * @returns the songs in their order, lengths in seconds and tempi in beats a minute where
 *   given, and a problem for every line that is neither empty nor a song nor the header.
 *   Never throws.
 */
export function parsePlaylist(text: string, first: FirstOfLine = 'title'): Playlist {
  const playlist: Playlist = { songs: [], songLines: [], problems: [] }
  const records = recordsOf(text).filter((record) => record.text !== '')
  const [top] = records
  const header = top && top.text.length <= LONGEST_LINE ? readHeader(top.text) : undefined
  for (const { line, text: entry } of header ? records.slice(1) : records) {
    if (line <= MOST_LINES) readLine(entry, line, header ?? first, playlist)
    else playlist.problems.push({ line, text: entry.slice(0, LONGEST_LINE), sentence: say('lists.tooManyLines', { most: MOST_LINES }) })
  }
  return !header && playlist.songs.some(({ artist }) => artist !== undefined) ? { ...playlist, guessed: true } : playlist
}

function readLine(text: string, line: number, columns: Header | FirstOfLine, { songs, songLines, problems }: Playlist): void {
  const reading =
    text.length > LONGEST_LINE
      ? { ok: false as const, sentence: say('lists.longTitle') }
      : typeof columns === 'string'
        ? songOfLine(text, columns)
        : songOfRow(text, columns)
  if (!reading.ok) {
    problems.push({ line, text, sentence: reading.sentence })
    return
  }
  songs.push(reading.song)
  songLines.push(line)
}
