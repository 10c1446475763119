import { ridesBySong, type ShelfSong } from '#plan/songs/shelfSong.ts'
import { words } from '#words/words.ts'
import { keptCollection } from './keptCollection.ts'
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
  const kept = keptCollection(
    get,
    shelf?.list,
    (songs) => set({ songs }),
    () => words.shelf.songsNotListed,
  )

  return {
    songs: [],
    songRides: NOWHERE,
    keepsSongs: shelf !== null,
    refreshSongs: async () => void (await kept.refresh()),
    refreshSongRides: async () => {
      if (!rides) return
      await kept.attempt(words.shelf.ridesNotSearched, async () => {
        const loaded = await Promise.all((await rides.list()).map(({ id }) => rides.load(id)))
        set({ songRides: ridesBySong(loaded.flatMap((one) => (one.ok ? [one.ride] : []))) })
      })
    },
    removedSong: null,
    keepSongs: async (songs, quietly = false) =>
      songs.length > 0 &&
      kept.change(words.shelf.notAllSaved, async () => {
        for (const song of songs) await shelf!.save(song)
        if (quietly) return
        return songs.length === 1 ? words.shelf.savedSong(songs[0]!.song) : words.shelf.savedSongs({ songs: songs.length })
      }),
    removeSong: async (id) => {
      const song = get().songs.find((other) => other.id === id)
      if (!song) return
      const { fingerprint, title } = song.song
      const file = fingerprint !== undefined && get().keptSoundFiles.has(fingerprint) ? await get().soundFile(fingerprint) : null
      await kept.change(words.shelf.songNotRemoved(song.song), async () => {
        await shelf!.remove(id)
        if (file) await get().dropSoundFile(fingerprint!)
        set({ removedSong: { kept: song, file } })
        return words.shelf.removedSong({ title, withFile: file !== null })
      })
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
