import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { RideCopy } from './rideCopy.ts'

/** The first copy, with room for a few words about the window itself. */
export interface RideDatabase extends RideCopy {
  readMark: (name: string) => Promise<string | undefined>
  writeMark: (name: string, value: string) => Promise<void>
  close: () => void
}

interface Shape extends DBSchema {
  rides: { key: string; value: unknown }
  marks: { key: string; value: string }
}

const NAME = 'ridewright'
const VERSION = 1

/** Saved rides in IndexedDB; null where the browser has none to give, as some private windows do. */
export async function openRideDatabase(): Promise<RideDatabase | null> {
  let database: IDBPDatabase<Shape>
  try {
    database = await open()
  } catch {
    return null
  }

  /** A connection the browser has dropped (a long sleep, a cleaned profile) is opened anew, once. */
  async function withDatabase<Result>(act: (open: IDBPDatabase<Shape>) => Promise<Result>): Promise<Result> {
    try {
      return await act(database)
    } catch (error) {
      if (!(error instanceof DOMException) || error.name !== 'InvalidStateError') throw error
      database = await open()
      return act(database)
    }
  }

  return {
    read: (id) => withDatabase((db) => db.get('rides', id)),
    readAll: () =>
      withDatabase(async (db) => {
        const found: { id: string; value: unknown }[] = []
        for (let cursor = await db.transaction('rides').store.openCursor(); cursor; cursor = await cursor.continue())
          found.push({ id: cursor.key, value: cursor.value })
        return found
      }),
    write: (id, value) =>
      withDatabase(async (db) => {
        // Strict: done means on the disk, so a killed browser loses at most what is still on its way.
        const transaction = db.transaction('rides', 'readwrite', { durability: 'strict' })
        await Promise.all([transaction.store.put(value, id), transaction.done])
      }),
    remove: (id) => withDatabase((db) => db.delete('rides', id)),
    readMark: (name) => withDatabase((db) => db.get('marks', name)),
    writeMark: async (name, value) => {
      await withDatabase((db) => db.put('marks', value, name))
    },
    close: () => database.close(),
  }
}

function open(): Promise<IDBPDatabase<Shape>> {
  return openDB<Shape>(NAME, VERSION, {
    upgrade: (database) => {
      database.createObjectStore('rides')
      database.createObjectStore('marks')
    },
    // A newer build in another window must not wait for this one; the next use opens again.
    blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
  })
}
