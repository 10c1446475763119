import { type IDBPDatabase, openDB } from 'idb'
import type { RideCopy } from './rideCopy.ts'

/** A first copy, with room for a few words about the window itself. */
export interface KeyedDatabase extends RideCopy {
  /** Ids of all values, none of which is read. */
  keys: () => Promise<string[]>
  readMark: (name: string) => Promise<string | undefined>
  /** @param isSwift without waiting for the disk itself: a killed browser keeps it, a machine that loses its power may not */
  writeMark: (name: string, value: string, isSwift?: boolean) => Promise<void>
  removeMark: (name: string) => Promise<void>
  /** All whose name begins so. */
  marksUnder: (prefix: string) => Promise<{ name: string; value: string }[]>
  close: () => void
}

const VERSION = 1

/**
 * Values by id in an IndexedDB of their own; null where the browser has none to give, as some
 * private windows do.
 *
 * @param name of the database
 * @param things what its values are, as the name of their store
 */
export async function openKeyedDatabase(name: string, things: string): Promise<KeyedDatabase | null> {
  const open = () => openNamed(name, things)
  let database: IDBPDatabase
  try {
    database = await open()
  } catch {
    return null
  }

  /** A connection the browser has dropped (a long sleep, a cleaned profile) is opened anew, once. */
  async function withDatabase<Result>(act: (open: IDBPDatabase) => Promise<Result>): Promise<Result> {
    try {
      return await act(database)
    } catch (error) {
      if (!(error instanceof DOMException) || error.name !== 'InvalidStateError') throw error
      database = await open()
      return act(database)
    }
  }

  return {
    read: (id) => withDatabase((db) => db.get(things, id)),
    has: (id) => withDatabase(async (db) => (await db.getKey(things, id)) !== undefined),
    readAll: () =>
      withDatabase(async (db) => {
        const found: { id: string; value: unknown }[] = []
        for (let cursor = await db.transaction(things).store.openCursor(); cursor; cursor = await cursor.continue())
          found.push({ id: String(cursor.key), value: cursor.value })
        return found
      }),
    write: (id, value) =>
      withDatabase(async (db) => {
        // Strict: done means on the disk, so a killed browser loses at most what is still on its way.
        const transaction = db.transaction(things, 'readwrite', { durability: 'strict' })
        await Promise.all([transaction.store.put(value, id), transaction.done])
      }),
    remove: (id) => withDatabase((db) => db.delete(things, id)),
    keys: () => withDatabase(async (db) => (await db.getAllKeys(things)).map(String)),
    readMark: (name) => withDatabase((db) => db.get('marks', name)),
    writeMark: (name, value, isSwift) =>
      withDatabase(async (db) => {
        const transaction = db.transaction('marks', 'readwrite', { durability: isSwift ? 'relaxed' : 'strict' })
        await Promise.all([transaction.store.put(value, name), transaction.done])
      }),
    removeMark: (name) => withDatabase((db) => db.delete('marks', name)),
    marksUnder: (prefix) =>
      withDatabase(async (db) => {
        const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`)
        const store = db.transaction('marks').store
        const [names, values] = await Promise.all([store.getAllKeys(range), store.getAll(range)])
        return names.map((name, index) => ({ name: String(name), value: String(values[index]) }))
      }),
    close: () => database.close(),
  }
}

function openNamed(name: string, things: string): Promise<IDBPDatabase> {
  return openDB(name, VERSION, {
    upgrade: (database) => {
      database.createObjectStore(things)
      database.createObjectStore('marks')
    },
    // A newer build in another window must not wait for this one; the next use opens again.
    blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
  })
}
