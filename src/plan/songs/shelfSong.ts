import * as v from 'valibot'
import type { NewId } from '#plan/copies.ts'
import { jsonOf } from '#plan/document/jsonOf.ts'
import { LIMITS, songSchema } from '#plan/document/schema.ts'
import { withOddOfBends } from '#plan/migrations/from1.ts'
import { type Ride, type Song, tempoOf } from '#plan/model.ts'
import { faultOfOdd } from './oddBeats.ts'
import { type PlaylistSong, sectionsFromPlaylist } from './sectionsFromPlaylist.ts'

/** The form of kept songs this build writes. The first had no odd places (see migrations/from1.ts). */
const CURRENT_SHELF_SONG = 2

/** A song kept apart from rides, to be used in any of them. The song's id is the shelf's own. */
export interface ShelfSong {
  id: string
  song: Song
  /** How much drive it has, 1 to 5, by the leader's own ear. */
  energy?: 1 | 2 | 3 | 4 | 5
}

const schema = v.object({
  shelfSong: v.picklist([1, CURRENT_SHELF_SONG]),
  id: v.pipe(v.string(), v.minLength(1), v.maxLength(LIMITS.id)),
  song: songSchema,
  energy: v.optional(v.picklist([1, 2, 3, 4, 5])),
})

/** A kept song as text. */
export const writeShelfSong = (song: ShelfSong): string => JSON.stringify({ shelfSong: CURRENT_SHELF_SONG, ...song })

/** Reads such a text; null where it is none, is of a form to come, or breaks the rules a ride's own songs keep. Never throws. */
export function readShelfSong(text: string): ShelfSong | null {
  const read = v.safeParse(schema, jsonOf(text))
  if (!read.success) return null
  const { shelfSong: form, ...kept } = read.output
  const { grid } = kept.song
  if (!grid) return kept as ShelfSong
  const { anchors, odd } = grid
  const rises = anchors.every(([count, second], i) => i === 0 || (count > anchors[i - 1]![0] && second > anchors[i - 1]![1]))
  if (!rises || (odd && faultOfOdd(odd))) return null
  return { ...kept, song: { ...kept.song, grid: form === 1 ? withOddOfBends(grid) : grid } } as ShelfSong
}

/** The same song by the same artist, however it is written: case, accents and spaces do not count. */
export const songKey = ({ title, artist }: Pick<Song, 'title' | 'artist'>): string => `${folded(title)}|${folded(artist ?? '')}`

const folded = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').replace(/\s+/g, ' ').trim().toLowerCase()

/**
 * A song as it is put on the shelf: in place of the one that is there by that title and artist,
 * whose energy stays, else under an id of its own.
 */
export function onShelf(song: Song, shelf: readonly ShelfSong[], newId: NewId): ShelfSong {
  const there = shelf.find((other) => songKey(other.song) === songKey(song))
  const id = there?.id ?? newId()
  return { ...there, id, song: { ...song, id } }
}

/** Songs of a list as they are put on the shelf: what is there already keeps all the list does not say. */
export function listOnShelf(songs: readonly PlaylistSong[], shelf: readonly ShelfSong[], newId: NewId): ShelfSong[] {
  const result = new Map<string, ShelfSong>()
  for (const entry of songs) {
    const [section] = sectionsFromPlaylist([entry], newId)
    const made = section!.song!
    const there = shelf.find((other) => songKey(other.song) === songKey(made))
    const kept = there && {
      ...there.song,
      ...(entry.lengthSeconds !== undefined && { lengthSeconds: made.lengthSeconds }),
      // A tempo that was found by ear or file is better than a list's; only a missing one is taken.
      ...(!there.song.grid && made.grid && { grid: made.grid, strikesPerBeat: made.strikesPerBeat }),
    }
    result.set(songKey(made), onShelf(kept ?? made, shelf, newId))
  }
  return [...result.values()]
}

/** A kept song as a ride takes it in: the same song under an id of the ride's own. */
export const forRide = ({ song }: ShelfSong, newId: NewId): Song => ({ ...song, id: newId() })

/** Titles of the rides that hold each song, by its key. */
export function ridesBySong(rides: readonly Ride[]): Map<string, string[]> {
  const found = new Map<string, string[]>()
  for (const ride of rides) {
    for (const key of new Set(ride.sections.flatMap(({ song }) => (song ? [songKey(song)] : [])))) {
      found.set(key, [...(found.get(key) ?? []), ride.title])
    }
  }
  return found
}

export const SONG_ORDERS = ['title', 'artist', 'tempo', 'length', 'energy'] as const
export type SongOrder = (typeof SONG_ORDERS)[number]

/** Kept songs whose title or artist has every word of a search, in an order; what is not known comes last. */
export function findSongs(songs: readonly ShelfSong[], search: string, order: SongOrder): ShelfSong[] {
  const words = folded(search).split(' ')
  const value = ({ song, energy }: ShelfSong): string | number | undefined => {
    if (order === 'title') return folded(song.title)
    if (order === 'artist') return song.artist && folded(song.artist)
    if (order === 'tempo') return song.grid && tempoOf(song.grid)
    return order === 'length' ? song.lengthSeconds : energy && -energy
  }
  return songs
    .filter(({ song }) => words.every((word) => songKey(song).includes(word)))
    .toSorted((a, b) => compare(value(a), value(b)) || compare(folded(a.song.title), folded(b.song.title)))
}

function compare(a: string | number | undefined, b: string | number | undefined): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined)
  return a < b ? -1 : a > b ? 1 : 0
}
