import { type Profile, readProfile, writeProfile } from '#plan/kept/profile.ts'
import { openKeyedDatabase } from './keyedDatabase.ts'
import { openRideFiles } from './rideFiles.ts'
import { openSealedStore, type SealedStore, type SealedWorld } from './sealedStore.ts'

/** The bikes, riders and house rules kept in this browser, listed by name. */
type ProfileStorage = SealedStore<Profile>

const browserWorld: SealedWorld = {
  now: () => Date.now(),
  database: openProfileDatabase,
  files: () => openRideFiles(() => navigator.storage.getDirectory(), 'profiles'),
}

/** The first copy of the profiles, apart from the rides: neither can harm the other. */
function openProfileDatabase() {
  return openKeyedDatabase('ridewright.profiles', 'profiles')
}

/** Opens the two copies of the profiles. Null where nothing can be kept. */
export async function openProfileStorage(world: SealedWorld = browserWorld): Promise<ProfileStorage | null> {
  const store = await openSealedStore<Profile>(world, { write: writeProfile, read: readProfile, titleOf: ({ name }) => name })
  return store && { ...store, list: async () => (await store.list()).sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0)) }
}
