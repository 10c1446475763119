import type { HeardSong, Hearing } from '#plan/songs/heardSong.ts'
import type { SongSound } from '#plan/sound/songSound.ts'
import { words } from '#words/words.ts'
import type { HearSong, SoundShelf } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** What is known here of the sound of songs, by their fingerprints. Rides hold none of it. */
export interface SoundSlice {
  /** Finds the beat in files of music, and remembers what they look like and where they are; null where there is no sound. */
  hearSong: HearSong | null
  /** Looks of sounds that were heard or asked for in this window. */
  sounds: ReadonlyMap<string, SongSound>
  /** Files given to this window since it was opened. */
  soundFiles: ReadonlyMap<string, Blob>
  /** Songs whose file is kept on this device because its user asked for it. */
  keptSoundFiles: ReadonlySet<string>
  /** Whether files can be kept. */
  keepsSoundFiles: boolean

  /** Reads which files are kept. */
  refreshSoundFiles: () => Promise<void>
  /** Brings the looks of these sounds in, where they are kept. */
  wantSounds: (ids: readonly string[]) => Promise<void>
  /** The file of a song: given to this window, or kept; null where there is none. */
  soundFile: (id: string) => Promise<Blob | null>
  /** Has the file of a song at hand in this window. */
  haveSoundFile: (id: string, file: Blob) => void
  /** Keeps the file of a song for the next time. False when it cannot be kept, which is said. */
  keepSoundFile: (id: string) => Promise<boolean>
  /** Takes a kept file away again; it stays at hand until the window is closed. */
  dropSoundFile: (id: string) => Promise<void>
}

export function createSoundSlice(set: SetState, get: GetState, hear: HearSong | null, shelf: SoundShelf | null): SoundSlice {
  /** Asked for once; a sound that is not kept is not asked for again. */
  const asked = new Set<string>()

  const put = (sound: SongSound) => set(({ sounds }) => ({ sounds: new Map(sounds).set(sound.id, sound) }))

  const haveSoundFile = (id: string, file: Blob) => set(({ soundFiles }) => ({ soundFiles: new Map(soundFiles).set(id, file) }))

  function remember({ fingerprint, sound }: HeardSong, file: File): void {
    put(sound)
    haveSoundFile(fingerprint, file)
    // Nothing is lost when it cannot be kept: the file can be dropped again.
    void shelf?.save(sound).catch(() => {})
  }

  return {
    hearSong:
      hear &&
      ((file, hints, onChange, options) => {
        const say = (hearing: Hearing) => {
          if (hearing.kind === 'heard') remember(hearing.song, file)
          if (hearing.kind === 'known') haveSoundFile(hearing.fingerprint, file)
          onChange(hearing)
        }
        return hear(file, hints, say, options)
      }),
    sounds: new Map(),
    soundFiles: new Map(),
    keptSoundFiles: new Set(),
    keepsSoundFiles: shelf !== null,

    refreshSoundFiles: async () => {
      const kept = await shelf?.listFiles().catch(() => [])
      if (kept) set({ keptSoundFiles: new Set(kept) })
    },
    wantSounds: async (ids) => {
      const missing = ids.filter((id) => !asked.has(id) && !get().sounds.has(id))
      for (const id of missing) asked.add(id)
      const found = await Promise.all(missing.map((id) => shelf?.load(id).catch(() => null)))
      const fresh = found.filter((sound) => sound !== null && sound !== undefined)
      if (fresh.length > 0) set(({ sounds }) => ({ sounds: new Map([...sounds, ...fresh.map((sound) => [sound.id, sound] as const)]) }))
    },
    soundFile: async (id) => get().soundFiles.get(id) ?? (await shelf?.loadFile(id).catch(() => null)) ?? null,
    haveSoundFile,
    keepSoundFile: async (id) => {
      const file = get().soundFiles.get(id)
      if (!shelf || !file) return false
      try {
        await shelf.saveFile(id, file)
      } catch (error) {
        const details = [error instanceof Error ? error.message : String(error)]
        get().notify({ kind: 'problem', sentence: words.shelf.fileNotSaved, details })
        return false
      }
      set(({ keptSoundFiles }) => ({ keptSoundFiles: new Set(keptSoundFiles).add(id) }))
      return true
    },
    dropSoundFile: async (id) => {
      try {
        await shelf?.removeFile(id)
      } catch (error) {
        const details = [error instanceof Error ? error.message : String(error)]
        return get().notify({ kind: 'problem', sentence: words.shelf.fileNotRemoved, details })
      }
      set(({ keptSoundFiles }) => ({ keptSoundFiles: new Set([...keptSoundFiles].filter((other) => other !== id)) }))
    },
  }
}
