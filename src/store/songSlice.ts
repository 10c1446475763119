import { ridesBySong, type ShelfSong } from '#plan/shelfSong.ts'
import { plural } from '#plan/words.ts'
import type { RideShelf, SongShelf } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** The songs kept on this machine, apart from rides. */
export interface SongSlice {
  songs: readonly ShelfSong[]
  /** Titles of the saved rides that hold a song, by its key. */
  songRides: ReadonlyMap<string, readonly string[]>
  /** Whether songs can be kept. */
  keepsSongs: boolean

  /** Reads the shelf anew; what goes wrong is said in a notice. */
  refreshSongs: () => Promise<void>
  /** Looks through the saved rides for where songs are used. */
  refreshSongRides: () => Promise<void>
  /** Keeps songs, each in place of the one with its id. False when one could not be kept, which is said. */
  keepSongs: (songs: readonly ShelfSong[]) => Promise<boolean>
  removeSong: (id: string) => Promise<void>
}

const NOWHERE: ReadonlyMap<string, readonly string[]> = new Map()

export function createSongSlice(set: SetState, get: GetState, shelf: SongShelf | null, rides: RideShelf | null): SongSlice {
  const failed = (sentence: string, error: unknown) =>
    get().notify({ kind: 'problem', sentence, details: [error instanceof Error ? error.message : String(error)] })

  const refreshSongs = async () => {
    if (!shelf) return
    try {
      set({ songs: await shelf.list() })
    } catch (error) {
      failed('The songs could not be listed.', error)
    }
  }

  return {
    songs: [],
    songRides: NOWHERE,
    keepsSongs: shelf !== null,
    refreshSongs,
    refreshSongRides: async () => {
      if (!rides) return
      try {
        const loaded = await Promise.all((await rides.list()).map(({ id }) => rides.load(id)))
        set({ songRides: ridesBySong(loaded.flatMap((one) => (one.ok ? [one.ride] : []))) })
      } catch (error) {
        failed('The saved rides could not be looked through for their songs.', error)
      }
    },
    keepSongs: async (songs) => {
      if (!shelf || songs.length === 0) return false
      try {
        for (const song of songs) await shelf.save(song)
        get().announce(
          songs.length === 1 ? `Kept ${songs[0]!.song.title} on the shelf` : `Kept ${plural(songs.length, 'song')} on the shelf`,
        )
      } catch (error) {
        failed('Not every song could be kept on the shelf.', error)
        await refreshSongs()
        return false
      }
      await refreshSongs()
      return true
    },
    removeSong: async (id) => {
      const kept = get().songs.find((other) => other.id === id)
      if (!shelf || !kept) return
      try {
        await shelf.remove(id)
        get().announce(`Removed ${kept.song.title} from the shelf`)
      } catch (error) {
        failed(`${kept.song.title} could not be removed from the shelf.`, error)
      }
      await refreshSongs()
    },
  }
}
