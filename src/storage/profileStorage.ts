import { type Profile, readProfile, writeProfile } from '#plan/profile.ts'
import { allIn, heldIn, recordsOf, setAside, writeTo } from './copies.ts'
import { openKeyedDatabase } from './keyedDatabase.ts'
import type { RideCopy } from './rideCopy.ts'
import { openRideFiles } from './rideFiles.ts'
import { makeRecord } from './rideRecord.ts'
import { serialQueue } from './serialQueue.ts'

/** The bikes, riders and house rules kept in this browser. Calls are carried out one after the other. */
export interface ProfileStorage {
  /** By name. One that cannot be read is left where it is and not listed. */
  list: () => Promise<Profile[]>
  /** Keeps a profile under its id. Rejects when no copy could be written. */
  save: (profile: Profile) => Promise<void>
  remove: (id: string) => Promise<void>
}

/** What profile storage needs of the browser. */
export interface ProfileWorld {
  now: () => number
  database: () => Promise<RideCopy | null>
  files: () => Promise<RideCopy | null>
}

const browserWorld: ProfileWorld = {
  now: () => Date.now(),
  database: openProfileDatabase,
  files: () => openRideFiles(() => navigator.storage.getDirectory(), 'profiles'),
}

/** The first copy of the profiles, apart from the rides: neither can harm the other. */
export function openProfileDatabase() {
  return openKeyedDatabase('ridewright.profiles', 'profiles')
}

/** Opens the two copies of the profiles, kept as saved rides are: sealed, whole or not at all. Null where nothing can be kept. */
export async function openProfileStorage(world: ProfileWorld = browserWorld): Promise<ProfileStorage | null> {
  const copies: RideCopy[] = (await Promise.all([world.database(), world.files()])).filter((copy) => copy !== null)
  if (copies.length === 0) return null
  const inTurn = serialQueue()

  async function save(profile: Profile): Promise<void> {
    const { id, name } = profile
    const held = await heldIn(copies, id)
    const records = recordsOf(held)
    if (held.length > 0 && !records.some(({ text }) => readProfile(text))) await setAside(copies, id, held[0])
    const record = makeRecord({ id, title: name }, writeProfile(profile), (records[0]?.revision ?? 0) + 1, world.now())
    await writeTo(copies, id, record)
  }

  async function list(): Promise<Profile[]> {
    const profiles = [...(await allIn(copies)).values()].flatMap((held) => newestReadable(held) ?? [])
    return profiles.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0))
  }

  return {
    list: () => inTurn(list),
    save: (profile) => inTurn(() => save(profile)),
    remove: (id) =>
      inTurn(async () => {
        for (const copy of copies.toReversed()) await copy.remove(id)
      }),
  }
}

function newestReadable(held: readonly unknown[]): Profile | null {
  for (const { text } of recordsOf(held)) {
    const profile = readProfile(text)
    if (profile) return profile
  }
  return null
}
