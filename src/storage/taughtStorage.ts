import { readTaught, type TaughtClass, writeTaught } from '#plan/kept/taught.ts'
import { openKeyedDatabase } from './keyedDatabase.ts'
import { openRideFiles } from './rideFiles.ts'
import { openSealedStore, type SealedStore, type SealedWorld } from './sealedStore.ts'

/** The log of classes taught, kept in this browser, newest day first. */
type TaughtStorage = SealedStore<TaughtClass>

const browserWorld: SealedWorld = {
  now: () => Date.now(),
  database: openTaughtDatabase,
  files: () => openRideFiles(() => navigator.storage.getDirectory(), 'taught'),
}

/** The first copy of the log, apart from the rides: neither can harm the other. */
function openTaughtDatabase() {
  return openKeyedDatabase('ridewright.taught', 'taught')
}

/** Opens the two copies of the log. Null where nothing can be kept. */
export async function openTaughtStorage(world: SealedWorld = browserWorld): Promise<TaughtStorage | null> {
  const store = await openSealedStore<TaughtClass>(world, {
    write: writeTaught,
    read: readTaught,
    titleOf: ({ day, title }) => `${day} ${title}`,
  })
  return store && { ...store, list: async () => (await store.list()).sort(newestFirst) }
}

const newestFirst = (a: TaughtClass, b: TaughtClass): number => momentOf(b).localeCompare(momentOf(a)) || (a.id < b.id ? -1 : 1)
const momentOf = ({ day, startedAt, bookedAt }: TaughtClass): string => `${day} ${startedAt ?? bookedAt ?? ''}`
