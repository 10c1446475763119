import * as v from 'valibot'
import { parseRide } from '#plan/document/parseRide.ts'
import { plainCopy } from '#plan/document/plainCopy.ts'
import { LIMITS } from '#plan/document/schema.ts'
import type { Ride } from '#plan/model.ts'
import { readShelfSong, type ShelfSong, writeShelfSong } from '#plan/songs/shelfSong.ts'
import { say, type Text } from '#words/said.ts'
import { type Profile, readProfile, writeProfile } from './profile.ts'
import { readTaught, type TaughtClass, writeTaught } from './taught.ts'
import { readVersion, type Version, writeVersion } from './version.ts'

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

type ReadBackup = { ok: true; backup: Backup; unreadable: number } | { ok: false; text: Text }

/**
 * Reads a backup. What in it cannot be read is left out and counted, and spoils nothing else.
 * Never throws. Cost: linear in its size.
 */
export function readBackup(value: unknown): ReadBackup {
  const read = v.safeParse(backupSchema, value)
  if (!read.success) return { ok: false, text: say('backup.damaged') }
  if (read.output.backup > CURRENT_BACKUP) return { ok: false, text: say('backup.newer') }
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
