import { type Playlist, parsePlaylist } from './parsePlaylist.ts'
import { isM3u, readM3u } from './playlist/readM3u.ts'
import { isXspf, readXspf } from './playlist/readXspf.ts'
import type { FirstOfLine } from './playlist/songOfLine.ts'

/**
 * Reads a list of songs as it was pasted or opened: a playlist in XSPF or M3U, a table with named
 * columns, or plain lines. What it is shows in its first characters, not in a file's name. Songs in
 * their order, and a problem for every entry that is none. Never throws.
 *
 * @param first what a plain line begins with
 */
export function readSongList(text: string, first: FirstOfLine = 'title'): Playlist {
  if (isXspf(text)) return readXspf(text)
  return isM3u(text) ? readM3u(text) : parsePlaylist(text, first)
}
