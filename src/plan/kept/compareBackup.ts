import { contentRevision } from '#plan/document/contentRevision.ts'
import { sameValue } from '#plan/edits.ts'
import { OWN } from '#plan/merge/spread.ts'
import type { Ride } from '#plan/model.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import { say, type Text } from '#words/said.ts'
import type { Backup, KeptRide } from './backup.ts'
import type { Profile } from './profile.ts'
import type { TaughtClass } from './taught.ts'
import type { VersionHead } from './version.ts'

/**
 * What an entry of a backup would do here: `new` there is none of its id; `same` it says what
 * is here; `newer` and `older` than what is here, by when each was last changed; `different`
 * where the times say nothing.
 */
type EntryState = 'new' | 'same' | 'newer' | 'older' | 'different'

export interface BackupEntry {
  /** Its kind and id. */
  key: string
  kind: 'ride' | 'version' | 'profile' | 'class' | 'song'
  title: Text
  state: EntryState
}

/** What is here, as far as a backup is compared with it. */
export interface Here {
  formPoints?: readonly string[]
  rides: readonly KeptRide[]
  versions: readonly VersionHead[]
  profiles: readonly Profile[]
  taught?: readonly TaughtClass[]
  songs?: readonly ShelfSong[]
}

/** Every entry of a backup with what it would do here; rides first. */
export function compareBackup(backup: Backup, here: Here): BackupEntry[] {
  const rides = new Map(here.rides.map((kept) => [kept.ride.id, kept]))
  const versions = new Set(here.versions.map(({ id }) => id))
  const profiles = new Map(here.profiles.map((profile) => [profile.id, profile]))
  return [
    ...backup.rides.map(
      (kept): BackupEntry => ({
        key: keyOf('ride', kept.ride.id),
        kind: 'ride',
        title: kept.ride.title || say('names.untitled'),
        state: stateOfRide(kept, rides.get(kept.ride.id)),
      }),
    ),
    ...backup.versions.map(
      ({ id, name }): BackupEntry => ({
        key: keyOf('version', id),
        kind: 'version',
        title: name,
        state: versions.has(id) ? 'same' : 'new',
      }),
    ),
    ...backup.profiles.map((profile): BackupEntry => {
      const held = profiles.get(profile.id)
      const state = held === undefined ? 'new' : sameValue(held, profile) ? 'same' : 'different'
      return { key: keyOf('profile', profile.id), kind: 'profile', title: profile.name, state }
    }),
    ...classesOf(backup, here),
    ...songsOf(backup, here),
    ...formPointsOf(backup, here),
  ]
}

function classesOf({ taught = [] }: Backup, here: Here): BackupEntry[] {
  const held = new Map(here.taught?.map((entry) => [entry.id, entry]))
  return taught.map((entry) => {
    const own = held.get(entry.id)
    const state = own === undefined ? 'new' : sameValue(own, entry) ? 'same' : 'different'
    return { key: keyOf('class', entry.id), kind: 'class', title: say('backup.classTaught', { title: entry.title, on: entry.day }), state }
  })
}

function songsOf({ songs = [] }: Backup, here: Here): BackupEntry[] {
  const held = new Map(here.songs?.map((song) => [song.id, song]))
  return songs.map((song) => {
    const own = held.get(song.id)
    const state = own === undefined ? 'new' : sameValue(own, song) ? 'same' : 'different'
    return { key: keyOf('song', song.id), kind: 'song', title: song.song.title, state }
  })
}

/** The key of the leader's own form points. */
export const FORM_POINTS_KEY = 'form points'

function formPointsOf({ formPoints }: Backup, here: Here): BackupEntry[] {
  if (!formPoints) return []
  const state = here.formPoints === undefined ? 'new' : sameValue(here.formPoints, formPoints) ? 'same' : 'different'
  return [{ key: FORM_POINTS_KEY, kind: 'profile', title: say('backup.ownFormCues'), state }]
}

export const keyOf = (kind: BackupEntry['kind'], id: string): string => `${kind} ${id}`

function stateOfRide({ ride, updated }: KeptRide, held: KeptRide | undefined): EntryState {
  if (!held) return 'new'
  if (contentRevision(held.ride) === contentRevision(ride) && sameOwn(held.ride, ride)) return 'same'
  if (updated === held.updated) return 'different'
  return updated > held.updated ? 'newer' : 'older'
}

const sameOwn = (a: Ride, b: Ride): boolean => OWN.every((key) => sameValue(a[key], b[key]))
