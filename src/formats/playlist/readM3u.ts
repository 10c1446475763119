import type { Playlist } from '#formats/parsePlaylist.ts'
import { say } from '#words/said.ts'
import { songOfLine } from './songOfLine.ts'
import { finished } from './songReading.ts'

/** Extended M3U says so in its first line. */
export const isM3u = (text: string): boolean => /^\ufeff?\s*#EXT(?:M3U|INF)/i.test(text)

/** Most lines read; more than a year of classes. */
const MOST_LINES = 6_000

/** Longest line looked at; a longer one is a problem of its own. */
const LONGEST_LINE = 1_000

/**
 * Reads an extended M3U or M3U8 playlist: length in seconds and "artist - title" from each
 * `#EXTINF` line (−1 is an unknown length), or the file's name where a song has no such line.
 * Other comment lines are left aside. Source: RFC 8216, section 4.3.2.1, and players' habits.
 */
export function readM3u(text: string): Playlist {
  const playlist: Playlist = { songs: [], songLines: [], problems: [] }
  let told = false
  const lines = text.split(/\r\n|[\n\r]/)
  for (const [index, raw] of lines.slice(0, MOST_LINES).entries()) {
    // One space for many: patterns that look for an end among spaces try each of them.
    const line = raw
      .slice(0, 2 * LONGEST_LINE)
      .replace(/[\s\ufeff]+/g, ' ')
      .trim()
    const isInfo = /^#EXTINF:/i.test(line)
    if (line.length > LONGEST_LINE && (isInfo || !(told || line.startsWith('#')))) {
      playlist.problems.push({ line: index + 1, text: line, sentence: say('lists.longTitle') })
      told = isInfo
      continue
    }
    const info = /^#EXTINF:\s*(-?\d+(?:\.\d+)?)[^,]*,\s*(.*)$/i.exec(line)
    if (info) add(playlist, index + 1, line, info[2]!, Number(info[1]))
    // The address after an EXTINF line says nothing more.
    else if (line !== '' && !line.startsWith('#') && !told) add(playlist, index + 1, line, nameOf(line))
    told = info !== null || (told && line.startsWith('#'))
  }
  if (lines.slice(MOST_LINES).some((line) => line.trim() !== ''))
    playlist.problems.push({
      line: MOST_LINES + 1,
      text: lines[MOST_LINES]!.slice(0, LONGEST_LINE),
      sentence: say('lists.tooManyLines', { most: MOST_LINES }),
    })
  return playlist
}

function add({ songs, songLines, problems }: Playlist, line: number, text: string, name: string, seconds = -1): void {
  const parts = /^(.+?)\s+[-–—]\s+(.+)$/.exec(name.trim())
  const [artist, title] = parts ? [parts[1]!, parts[2]!] : [undefined, name.trim()]
  const read = seconds > 0 ? finished(title, artist, seconds) : parts ? finished(title, artist) : songOfLine(name.trim())
  if (!read.ok) {
    problems.push({ line, text, sentence: read.sentence })
    return
  }
  songs.push(read.song)
  songLines.push(line)
}

/** "music/03 Tin Kites - Elevator.mp3" → "Tin Kites - Elevator". */
function nameOf(address: string): string {
  const file = decoded(address).split(/[\\/]/).at(-1)!
  return file
    .replace(/\.\w{2,5}$/, '')
    .replace(/^\d{1,3}[ ._-]+/, '')
    .replaceAll('_', ' ')
}

function decoded(address: string): string {
  try {
    return decodeURIComponent(address)
  } catch {
    return address
  }
}
