import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { taughtOf } from '#engine/log/taughtOf.ts'
import { openKeyedDatabase } from '#storage/keyedDatabase.ts'
import { openRideFiles } from '#storage/rideFiles.ts'
import type { SealedWorld } from '#storage/sealedStore.ts'
import { openTaughtStorage } from '#storage/taughtStorage.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { type MemoryFiles, memoryFiles, WritableFileHandle } from '#tests/support/memoryFiles.ts'

/** The database this browser has had from the first version on; its name is never changed. */
const openDatabase = () => openKeyedDatabase('ridewright.taught', 'taught')

const ride = demoRide('spark')
const entryOn = (day: string, startedAt?: string) =>
  JSON.parse(JSON.stringify(taughtOf({ ride, report: computeRide(ride) }, { id: `${day}.${startedAt ?? ''}`, day, startedAt })))
const [monday, noon, evening] = [entryOn('2026-11-23'), entryOn('2026-11-25', '12:10'), entryOn('2026-11-25', '18:30')]

let files: MemoryFiles
let world: SealedWorld

beforeAll(() => vi.stubGlobal('FileSystemFileHandle', WritableFileHandle))
afterAll(() => vi.unstubAllGlobals())
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory()
  files = memoryFiles()
  world = { now: () => 1000, database: openDatabase, files: () => openRideFiles(files.root, 'taught') }
})

describe('the log', () => {
  it('is listed newest first, from either copy, after another start too', async () => {
    const storage = (await openTaughtStorage(world))!
    for (const entry of [noon, monday, evening]) await storage.save(entry)
    for (const change of [{}, { files: async () => null }, { database: async () => null }]) {
      expect(await (await openTaughtStorage({ ...world, ...change }))!.list()).toEqual([evening, noon, monday])
    }
  })

  it('takes changes and deletions, and lists nothing it cannot read', async () => {
    const storage = (await openTaughtStorage(world))!
    await storage.save(monday)
    await storage.save({ ...monday, headCount: 18 })
    expect(await storage.list()).toEqual([{ ...monday, headCount: 18 }])
    await storage.remove(monday.id)
    expect(await storage.list()).toEqual([])
    const database = (await openDatabase())!
    await database.write('x', { half: true })
    expect(await storage.list()).toEqual([])
    database.close()
  })

  it('is none where nothing can be kept', async () => {
    expect(await openTaughtStorage({ ...world, database: async () => null, files: async () => null })).toBeNull()
  })
})
