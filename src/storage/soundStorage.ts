import { isSongSound, type SongSound } from '#plan/sound/songSound.ts'
import { type KeyedDatabase, openKeyedDatabase } from './keyedDatabase.ts'

/** Looks of sounds, and the files their user asked to keep; both by fingerprint. */
interface SoundStorage {
  load: (id: string) => Promise<SongSound | null>
  save: (sound: SongSound) => Promise<void>
  listFiles: () => Promise<string[]>
  loadFile: (id: string) => Promise<Blob | null>
  saveFile: (id: string, file: Blob) => Promise<void>
  removeFile: (id: string) => Promise<void>
}

/** What it needs of the browser; each null where there is none. */
interface SoundWorld {
  looks: () => Promise<KeyedDatabase | null>
  files: () => Promise<KeyedDatabase | null>
}

const browserWorld: SoundWorld = {
  looks: () => openKeyedDatabase('ridewright.sounds', 'sounds'),
  files: () => openKeyedDatabase('ridewright.soundFiles', 'files'),
}

/**
 * Opens the kept sounds. One copy is enough: both come back by dropping the file again. Null where nothing can be kept.
 */
export async function openSoundStorage(world: SoundWorld = browserWorld): Promise<SoundStorage | null> {
  const [looks, files] = await Promise.all([world.looks(), world.files()])
  if (!looks || !files) return null
  return {
    load: async (id) => {
      const value = await looks.read(id)
      return isSongSound(value) ? value : null
    },
    save: (sound) => looks.write(sound.id, sound),
    listFiles: () => files.keys(),
    loadFile: async (id) => {
      const value = await files.read(id)
      return value instanceof Blob ? value : null
    },
    saveFile: (id, file) => files.write(id, file),
    removeFile: (id) => files.remove(id),
  }
}
