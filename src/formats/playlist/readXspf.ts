import type { Playlist } from '#formats/parsePlaylist.ts'
import { say } from '#words/said.ts'
import { finished } from './songReading.ts'
import { elementsOf, fromFirstElement, stretches, withoutComments } from './xmlText.ts'

/** XSPF is XML with a playlist at its root. */
export const isXspf = (text: string): boolean => /^<(?:\w{1,40}:)?playlist\b/i.test(fromFirstElement(text))

/** Longest file looked at, in characters. */
const LONGEST = 4_000_000
/** Most tracks read; more than a year of classes. */
const MOST_TRACKS = 2_000

/**
 * Reads an XSPF playlist: title, creator and duration (milliseconds) of each track. Everything
 * else in the file, locations among it, is left aside. The four elements are found as XML writes
 * them; document types are not followed, so no entity but the five of XML and numbers is read.
 * Lines of the songs and problems are their numbers in the list. Source: XSPF version 1.
 */
export function readXspf(text: string): Playlist {
  const playlist: Playlist = { songs: [], songLines: [], problems: [], numbered: true }
  let number = 0
  for (const track of elementsOf(withoutComments(text.slice(0, LONGEST)), 'track')) {
    number++
    if (number > MOST_TRACKS) {
      playlist.problems.push({ line: number, text: say('lists.laterTracks'), sentence: say('lists.tooManyTracks', { most: MOST_TRACKS }) })
      break
    }
    const title = elementOf(track, 'title') ?? ''
    const duration = Number(elementOf(track, 'duration') ?? 0)
    const seconds = Number.isFinite(duration) && duration > 0 ? duration / 1000 : undefined
    const read = finished(title, elementOf(track, 'creator') || undefined, seconds)
    if (read.ok) {
      playlist.songs.push(read.song)
      playlist.songLines.push(number)
    } else playlist.problems.push({ line: number, text: title || say('lists.untitledTrack'), sentence: read.sentence })
  }
  return playlist
}

function elementOf(track: string, name: string): string | undefined {
  const [found] = elementsOf(track, name)
  return found === undefined ? undefined : plain(found).replace(/\s+/g, ' ').trim()
}

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }

/** Character data as text: sections as they stand, entities and numbers resolved once. */
const plain = (xml: string): string =>
  stretches(xml, '<![CDATA[', ']]>')
    .map(({ inside, text }) => (inside ? text : text.replace(/&(#x?[\da-f]{1,8}|\w{1,8});/gi, (all, name: string) => entity(name) ?? all)))
    .join('')

function entity(name: string): string | undefined {
  if (!name.startsWith('#')) return ENTITIES[name]
  const code = /^#x/i.test(name) ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1))
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : undefined
}
