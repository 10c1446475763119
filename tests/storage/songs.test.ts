import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import { openKeyedDatabase } from '#storage/keyedDatabase.ts'
import { openRideFiles } from '#storage/rideFiles.ts'
import type { SealedWorld } from '#storage/sealedStore.ts'
import { openSongStorage } from '#storage/songStorage.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { memoryFiles, WritableFileHandle } from '#tests/support/memoryFiles.ts'
import { aSong, countedIds } from '#tests/support/smallRide.ts'

/** The database this browser has had from the first version on; its name is never changed. */
const openDatabase = () => openKeyedDatabase('ridewright.songs', 'songs')

const song: ShelfSong = { id: 'a', song: aSong('a', { title: 'Low Tide' }), energy: 3 }
let world: SealedWorld

beforeAll(() => vi.stubGlobal('FileSystemFileHandle', WritableFileHandle))
afterAll(() => vi.unstubAllGlobals())
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory()
  const files = memoryFiles()
  world = { now: () => 1000, database: openDatabase, files: () => openRideFiles(files.root, 'songs') }
})

describe('the songs kept in this browser', () => {
  it('are there from either copy, after another start too, until they are removed', async () => {
    const storage = (await openSongStorage(world))!
    await storage.save(song)
    for (const change of [{}, { files: async () => null }, { database: async () => null }]) {
      expect(await (await openSongStorage({ ...world, ...change }))!.list()).toEqual([song])
    }
    await storage.remove('a')
    expect(await storage.list()).toEqual([])
  })

  it('go into a backup and come back from it', async () => {
    const rides = {
      list: async () => [],
      load: async () => ({ ok: false as const, sentence: '', details: [] }),
      save: async () => {},
      remove: async () => {},
    }
    const storage = (await openSongStorage(world))!
    const { getState } = createAppStore({ newId: countedIds(), shelf: rides, songs: storage })
    await getState().keepSongs([song])
    const backup = await getState().makeBackup()
    expect(backup!.holds).toContain('1 song')
    await getState().removeSong('a')
    await getState().receiveBackup(JSON.parse(JSON.stringify(backup!.file)), 'all.json')
    expect(getState().restoring!.entries).toEqual([{ key: 'song a', kind: 'song', title: 'Low Tide', state: 'new' }])
    await getState().restoreBackup()
    expect(getState().songs).toEqual([song])
  })

  it('are looked for in the saved rides once those are read, and a failure is said', async () => {
    const broken = { list: async () => Promise.reject(new Error('no disk')), save: async () => {}, remove: async () => {} }
    const { getState } = createAppStore({ newId: countedIds(), shelf: null, songs: broken })
    await getState().refreshSongs()
    expect(getState().notice).toMatchObject({ kind: 'problem', sentence: 'Your songs couldn’t be listed.' })
  })
})
