import * as v from 'valibot'
import { contentRevision } from '#plan/document/contentRevision.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { plainCopy } from '#plan/document/plainCopy.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { sameValue } from '#plan/edits.ts'
import { OWN } from '#plan/merge/spread.ts'
import type { Ride } from '#plan/model.ts'
import { readShelfSong, type ShelfSong, writeShelfSong } from '#plan/songs/shelfSong.ts'
import { type Profile, readProfile, writeProfile } from './profile.ts'
import { readTaught, type TaughtClass, writeTaught } from './taught.ts'
import { readVersion, type Version, type VersionHead, writeVersion } from './version.ts'

/** The form of backups this build writes. */
const CURRENT_BACKUP = 1

/** A ride with when it was last changed, in milliseconds since 1970. */
export interface KeptRide {
  ride: Ride
  updated: number
}

/** Everything that is kept on a machine. */
export interface Backup {
  rides: KeptRide[]
  versions: Version[]
  profiles: Profile[]
  /** The log; absent where nothing was logged. */
  taught?: readonly TaughtClass[]
  /** Songs of the shelf; absent where there are none. */
  songs?: readonly ShelfSong[]
  /** Form points of the leader's own; absent where there are none. */
  formPoints?: readonly string[]
}

/** Most entries of each kind that are looked at in a backup. */
const MOST = 5_000

const backupSchema = v.object({
  ridewright: v.literal('backup'),
  backup: v.pipe(v.number(), v.integer(), v.minValue(1)),
  rides: v.pipe(v.array(v.object({ updated: v.pipe(v.number(), v.finite()), ride: v.unknown() })), v.maxLength(MOST)),
  versions: v.pipe(v.array(v.unknown()), v.maxLength(MOST)),
  profiles: v.pipe(v.array(v.unknown()), v.maxLength(MOST)),
  taught: v.optional(v.pipe(v.array(v.unknown()), v.maxLength(MOST))),
  songs: v.optional(v.pipe(v.array(v.unknown()), v.maxLength(MOST))),
  formPoints: v.optional(v.pipe(v.array(v.pipe(v.string(), v.maxLength(LIMITS.line))), v.maxLength(MOST))),
})

/** A backup as a plain value to write into a file. */
export function writeBackup({ rides, versions, profiles, taught, songs, formPoints }: Backup): object {
  return {
    ridewright: 'backup',
    backup: CURRENT_BACKUP,
    rides,
    versions: versions.map(writeVersion),
    profiles: profiles.map((profile) => JSON.parse(writeProfile(profile)) as unknown),
    ...(taught && { taught: taught.map((entry) => JSON.parse(writeTaught(entry)) as unknown) }),
    ...(songs && { songs: songs.map((song) => JSON.parse(writeShelfSong(song)) as unknown) }),
    ...(formPoints && { formPoints }),
  }
}

/** Whether a value means to be a backup, whole or not. */
export const isBackup = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'ridewright' in value && 'backup' in value

type ReadBackup = { ok: true; backup: Backup; unreadable: number } | { ok: false; sentence: string }

/**
 * Reads a backup. What in it cannot be read is left out and counted, and spoils nothing else.
 * Never throws. Cost: linear in its size.
 */
export function readBackup(value: unknown): ReadBackup {
  const read = v.safeParse(backupSchema, value)
  if (!read.success) return { ok: false, sentence: 'It is a damaged backup.' }
  if (read.output.backup > CURRENT_BACKUP) return { ok: false, sentence: 'It is a backup made with a newer version; update to read it.' }
  const rides = read.output.rides.flatMap(({ updated, ride }) => {
    const parsed = parseRide(ride)
    return parsed.ok ? [{ updated, ride: parsed.ride }] : []
  })
  const versions = read.output.versions.flatMap((version) => readVersion(version) ?? [])
  const profiles = read.output.profiles.flatMap((profile) => profileOf(profile) ?? [])
  const { output } = read
  const taught = output.taught?.flatMap((entry) => taughtIn(entry) ?? [])
  const songs = output.songs?.flatMap((song) => readShelfSong(textOf(song)) ?? [])
  const lists = [output.rides, output.versions, output.profiles, output.taught ?? [], output.songs ?? []]
  const all = lists.reduce((sum, list) => sum + list.length, 0)
  const readable = rides.length + versions.length + profiles.length + (taught?.length ?? 0) + (songs?.length ?? 0)
  const { formPoints } = output
  const backup = {
    ...(formPoints && { formPoints }),
    ...(taught && { taught: onceEach(taught, idOf) }),
    ...(songs && { songs: onceEach(songs, idOf) }),
    rides: onceEach(rides, ({ ride }) => ride.id),
    versions: onceEach(versions, idOf),
    profiles: onceEach(profiles, idOf),
  }
  return { ok: true, backup, unreadable: all - readable }
}

/** A profile or a class as it stands in a backup; one nested without end cannot even be written as text. */
function profileOf(value: unknown): Profile | null {
  return readProfile(textOf(value))
}

const taughtIn = (value: unknown): TaughtClass | null => readTaught(textOf(value))

function textOf(value: unknown): string {
  const copy = plainCopy(value)
  return copy.ok ? (JSON.stringify(copy.value) ?? '') : ''
}

const idOf = ({ id }: { id: string }): string => id

/** Of entries with one id the first, in their order. */
const onceEach = <Entry>(entries: readonly Entry[], id: (entry: Entry) => string): Entry[] => {
  const seen = new Set<string>()
  return entries.filter((entry) => seen.size < seen.add(id(entry)).size)
}

/**
 * What an entry of a backup would do here: `new` there is none of its id; `same` it says what
 * is here; `newer` and `older` than what is here, by when each was last changed; `different`
 * where the times say nothing.
 */
export type EntryState = 'new' | 'same' | 'newer' | 'older' | 'different'

export interface BackupEntry {
  /** Its kind and id. */
  key: string
  kind: 'ride' | 'version' | 'profile' | 'class' | 'song'
  title: string
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
  const versions = new Set(here.versions.map(idOf))
  const profiles = new Map(here.profiles.map((profile) => [profile.id, profile]))
  return [
    ...backup.rides.map(
      (kept): BackupEntry => ({
        key: keyOf('ride', kept.ride.id),
        kind: 'ride',
        title: kept.ride.title || 'untitled ride',
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
    return { key: keyOf('class', entry.id), kind: 'class', title: `${entry.title}, taught ${entry.day}`, state }
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
  return [{ key: FORM_POINTS_KEY, kind: 'profile', title: 'your own form points', state }]
}

export const keyOf = (kind: BackupEntry['kind'], id: string): string => `${kind} ${id}`

function stateOfRide({ ride, updated }: KeptRide, held: KeptRide | undefined): EntryState {
  if (!held) return 'new'
  if (contentRevision(held.ride) === contentRevision(ride) && sameOwn(held.ride, ride)) return 'same'
  if (updated === held.updated) return 'different'
  return updated > held.updated ? 'newer' : 'older'
}

const sameOwn = (a: Ride, b: Ride): boolean => OWN.every((key) => sameValue(a[key], b[key]))
