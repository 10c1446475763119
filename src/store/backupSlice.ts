import { type Backup, type KeptRide, readBackup, writeBackup } from '#plan/kept/backup.ts'
import { type BackupEntry, compareBackup, FORM_POINTS_KEY, type Here, keyOf } from '#plan/kept/compareBackup.ts'
import type { Profile } from '#plan/kept/profile.ts'
import { namedVersion, type Version } from '#plan/kept/version.ts'
import type { Ride } from '#plan/model.ts'
import { MOST_PATTERNS } from '#plan/patterns/ownPattern.ts'
import { say } from '#words/said.ts'
import { tell, words } from '#words/words.ts'
import type { Ports } from './ports.ts'
import { isOneTooMany } from './profileSlice.ts'
import type { GetState, SetState } from './state.ts'

/** A backup that is looked at; nothing of it is here yet. */
export interface Restoring {
  /** The file's name. */
  name: string
  backup: Backup
  entries: readonly BackupEntry[]
  /** Keys of the entries that will be put back. */
  taken: ReadonlySet<string>
  /** Entries that cannot be read. */
  unreadable: number
}

export interface BackupSlice {
  restoring: Restoring | null
  /** Rises with every backup made. */
  backupsMade: number

  /** All that is kept on this machine, as a value to write into a file, and what it holds in words; null, and said so, where it cannot be gathered. */
  makeBackup: () => Promise<{ file: object; holds: string } | null>
  /** Looks at a backup and says what it would change. */
  receiveBackup: (value: unknown, name: string) => Promise<void>
  takeEntry: (key: string, take: boolean) => void
  /** Puts back what is taken. What stands in its place is kept as a version first. */
  restoreBackup: () => Promise<void>
  cancelBackup: () => void
}

/** What is put back unless it is chosen otherwise: what adds, and what is newer than here. */
const usually = ({ state }: BackupEntry): boolean => state === 'new' || state === 'newer'

export function createBackupSlice(
  set: SetState,
  get: GetState,
  ports: Pick<Ports, 'shelf' | 'versions' | 'profiles' | 'taught' | 'songs' | 'newId'>,
): BackupSlice {
  const { shelf, versions, profiles, taught, songs, newId } = ports
  const failed = (sentence: string, error: unknown) =>
    get().notify({ kind: 'problem', sentence, details: [error instanceof Error ? error.message : String(error)] })

  /** All rides that open, the open one as it stands, and how many do not. */
  const allRides = async (): Promise<{ rides: KeptRide[]; unreadable: number }> => {
    const listed = (await shelf?.list()) ?? []
    const rides: KeptRide[] = []
    for (const { id, updated } of listed) {
      const open = get().ride
      const loaded = open?.id === id ? { ok: true as const, ride: open } : await shelf?.load(id)
      if (loaded?.ok) rides.push({ ride: loaded.ride, updated })
    }
    return { rides, unreadable: listed.length - rides.length }
  }

  const here = async (): Promise<Here> => ({
    rides: (await allRides()).rides,
    versions: (await versions?.heads()) ?? [],
    profiles: (await profiles?.list()) ?? [],
    taught: (await taught?.list()) ?? [],
    songs: (await songs?.list()) ?? [],
    ...ownFormPoints(),
  })

  /** Those of the trade are no one's own. */
  const ownFormPoints = () => {
    const { formPoints } = get()
    return formPoints === null ? {} : { formPoints }
  }

  const putBackRide = async (ride: Ride) => {
    const open = get().ride
    const loaded = open?.id === ride.id ? { ok: true as const, ride: open } : await shelf!.load(ride.id).catch(() => null)
    if (loaded?.ok) await versions?.save(namedVersion(loaded.ride, words.backup.beforeRestore, newId()))
    if (open?.id === ride.id) {
      if (get().received) get().dismissReceived()
      get().run({ label: say('backup.rideRestored'), apply: () => ride })
    } else await shelf!.save(ride)
  }

  const putBackProfile = async (profile: Profile) => {
    if (profiles && isOneTooMany(await profiles.list(), profile)) throw new Error(words.ownPatterns.full({ most: MOST_PATTERNS }))
    await profiles?.save(profile)
  }

  return {
    restoring: null,
    backupsMade: 0,

    makeBackup: async () => {
      try {
        const { rides, unreadable } = await allRides()
        const kept: Version[] = []
        for (const { id } of (await versions?.heads()) ?? []) {
          const version = await versions!.load(id)
          if (version) kept.push(version)
        }
        const shared = (await profiles?.list()) ?? []
        const log = (await taught?.list()) ?? []
        const onShelf = (await songs?.list()) ?? []
        const { backup } = words
        const parts = [
          backup.rides({ count: rides.length }),
          ...(kept.length > 0 ? [backup.versions({ count: kept.length })] : []),
          ...(shared.length > 0 ? [backup.profiles({ count: shared.length })] : []),
          ...(log.length > 0 ? [backup.classes({ count: log.length })] : []),
          ...(onShelf.length > 0 ? [backup.songs({ count: onShelf.length })] : []),
        ]
        const holds = backup.holds({ parts, unreadable, soundFiles: get().keptSoundFiles.size })
        set(({ backupsMade }) => ({ backupsMade: backupsMade + 1 }))
        return {
          file: writeBackup({
            rides,
            versions: kept,
            profiles: shared,
            ...(log.length > 0 && { taught: log }),
            ...(onShelf.length > 0 && { songs: onShelf }),
            ...ownFormPoints(),
          }),
          holds,
        }
      } catch (error) {
        failed(words.backup.notMade, error)
        return null
      }
    },

    receiveBackup: async (value, name) => {
      const read = readBackup(value)
      if (!shelf) return get().notify({ kind: 'problem', sentence: words.backup.cannotSave })
      if (!read.ok) return get().notify({ kind: 'problem', sentence: words.documents.notOpened({ file: name, why: tell(read.text) }) })
      try {
        const entries = compareBackup(read.backup, await here())
        const taken = new Set(entries.filter(usually).map(({ key }) => key))
        set({ restoring: { name, backup: read.backup, entries, taken, unreadable: read.unreadable } })
      } catch (error) {
        failed(words.backup.hereUnreadable, error)
      }
    },

    takeEntry: (key, take) => {
      const { restoring } = get()
      if (!restoring) return
      const taken = new Set(restoring.taken)
      if (take) taken.add(key)
      else taken.delete(key)
      set({ restoring: { ...restoring, taken } })
    },

    restoreBackup: async () => {
      const { restoring } = get()
      if (!restoring) return
      const { backup, taken } = restoring
      const isTaken = (kind: BackupEntry['kind'], id: string) => taken.has(keyOf(kind, id))
      set({ restoring: null })
      try {
        for (const { ride } of backup.rides) if (isTaken('ride', ride.id)) await putBackRide(ride)
        for (const version of backup.versions) if (isTaken('version', version.id)) await versions?.save(version)
        for (const entry of backup.taught ?? []) if (isTaken('class', entry.id)) await taught?.save(entry)
        for (const song of backup.songs ?? []) if (isTaken('song', song.id)) await songs?.save(song)
        for (const profile of backup.profiles) if (isTaken('profile', profile.id)) await putBackProfile(profile)
        if (backup.formPoints && taken.has(FORM_POINTS_KEY)) get().setFormPoints(backup.formPoints)
        get().announce(words.backup.restored({ count: taken.size }))
      } catch (error) {
        failed(words.backup.notAllRestored, error)
      }
      await Promise.all([
        get().refreshSavedRides(),
        get().refreshVersions(),
        get().refreshProfiles(),
        get().refreshTaught(),
        get().refreshSongs(),
      ])
    },

    cancelBackup: () => set({ restoring: null }),
  }
}
