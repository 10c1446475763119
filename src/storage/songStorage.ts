import { readShelfSong, type ShelfSong, writeShelfSong } from '#plan/songs/shelfSong.ts'
import { openKeyedDatabase } from './keyedDatabase.ts'
import { openRideFiles } from './rideFiles.ts'
import { openSealedStore, type SealedStore, type SealedWorld } from './sealedStore.ts'

/** The songs kept in this browser, in no order. */
type SongStorage = SealedStore<ShelfSong>

const browserWorld: SealedWorld = {
  now: () => Date.now(),
  database: openSongDatabase,
  files: () => openRideFiles(() => navigator.storage.getDirectory(), 'songs'),
}

/** The first copy of the songs, apart from the rides: neither can harm the other. */
function openSongDatabase() {
  return openKeyedDatabase('ridewright.songs', 'songs')
}

/** Opens the two copies of the songs. Null where nothing can be kept. */
export const openSongStorage = (world: SealedWorld = browserWorld): Promise<SongStorage | null> =>
  openSealedStore<ShelfSong>(world, { write: writeShelfSong, read: readShelfSong, titleOf: ({ song }) => song.title })
