import { ridesBySong, type ShelfSong } from '#plan/songs/shelfSong.ts'
import { words } from '#words/words.ts'
import type { RideShelf, SongShelf } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** The songs kept on this device, apart from rides. */
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
  /** The song taken away last, until it is put back or another goes. */
  removedSong: RemovedSong | null
  /** Keeps songs, each in place of the one with its id. False when one could not be kept, which is said; quietly, nothing else is. */
  keepSongs: (songs: readonly ShelfSong[], quietly?: boolean) => Promise<boolean>
  /** Takes a song away, with the file that was kept of it. Rides that hold the song keep all but that. */
  removeSong: (id: string) => Promise<void>
  /** Puts the song taken away last back, with its file where one was kept. */
  restoreSong: () => Promise<void>
  forgetRemovedSong: () => void
}

/** A song that was on the shelf, and its file where that was kept. */
interface RemovedSong {
  kept: ShelfSong
  file: Blob | null
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
      failed(words.shelf.songsNotListed, error)
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
        failed(words.shelf.ridesNotSearched, error)
      }
    },
    removedSong: null,
    keepSongs: async (songs, quietly = false) => {
      if (!shelf || songs.length === 0) return false
      try {
        for (const song of songs) await shelf.save(song)
        if (!quietly)
          get().announce(songs.length === 1 ? words.shelf.savedSong(songs[0]!.song) : words.shelf.savedSongs({ songs: songs.length }))
      } catch (error) {
        failed(words.shelf.notAllSaved, error)
        await refreshSongs()
        return false
      }
      await refreshSongs()
      return true
    },
    removeSong: async (id) => {
      const kept = get().songs.find((other) => other.id === id)
      if (!shelf || !kept) return
      const { fingerprint } = kept.song
      const file = fingerprint !== undefined && get().keptSoundFiles.has(fingerprint) ? await get().soundFile(fingerprint) : null
      try {
        await shelf.remove(id)
        if (file) await get().dropSoundFile(fingerprint!)
        set({ removedSong: { kept, file } })
        get().announce(words.shelf.removedSong({ title: kept.song.title, withFile: file !== null }))
      } catch (error) {
        failed(words.shelf.songNotRemoved(kept.song), error)
      }
      await refreshSongs()
    },
    forgetRemovedSong: () => set({ removedSong: null }),
    restoreSong: async () => {
      const { removedSong, keepSongs, haveSoundFile, keepSoundFile } = get()
      if (!removedSong || !(await keepSongs([removedSong.kept]))) return
      const { kept, file } = removedSong
      set({ removedSong: null })
      if (!file || kept.song.fingerprint === undefined) return
      haveSoundFile(kept.song.fingerprint, file)
      await keepSoundFile(kept.song.fingerprint)
    },
  }
}
