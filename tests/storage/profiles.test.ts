import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { DEFAULT_BIKE, DEFAULT_RIDERS } from '#plan/defaults.ts'
import { type Profile, profileOfBike, readProfile, writeProfile } from '#plan/kept/profile.ts'
import { openKeyedDatabase } from '#storage/keyedDatabase.ts'
import { openProfileStorage } from '#storage/profileStorage.ts'
import { openRideFiles } from '#storage/rideFiles.ts'
import { makeRecord } from '#storage/rideRecord.ts'
import type { SealedWorld } from '#storage/sealedStore.ts'
import { type MemoryFiles, memoryFiles, WritableFileHandle } from '#tests/support/memoryFiles.ts'

/** The database this browser has had from the first version on; its name is never changed. */
const openDatabase = () => openKeyedDatabase('ridewright.profiles', 'profiles')

const bike = profileOfBike({ ...DEFAULT_BIKE, id: 'b1', name: 'back room' })
const riders: Profile = { kind: 'riders', id: 'r1', name: 'over sixties', riders: [...DEFAULT_RIDERS] }
const rules: Profile = { kind: 'rules', id: 'h1', name: 'the barn', houseRules: { longestStanding: 200 }, avoidMoves: ['jump'] }

let files: MemoryFiles
let world: SealedWorld

beforeAll(() => vi.stubGlobal('FileSystemFileHandle', WritableFileHandle))
afterAll(() => vi.unstubAllGlobals())
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory()
  files = memoryFiles()
  world = { now: () => 1000, database: openDatabase, files: () => openRideFiles(files.root, 'profiles') }
})

const opened = async (change: Partial<SealedWorld> = {}) => (await openProfileStorage({ ...world, ...change }))!
const none = async () => null

describe('profiles', () => {
  it('are listed by name, from either copy, after another start too', async () => {
    const storage = await opened()
    for (const profile of [rules, bike, riders]) await storage.save(profile)
    for (const again of [storage, await opened(), await opened({ files: none }), await opened({ database: none })]) {
      expect(await again.list()).toEqual([bike, riders, rules])
    }
  })

  it('take the place of the one with their id, and can be removed', async () => {
    const storage = await opened()
    await storage.save(bike)
    await storage.save({ ...bike, name: 'front room' })
    expect((await storage.list()).map(({ name }) => name)).toEqual(['front room'])
    await storage.remove(bike.id)
    expect(await (await opened()).list()).toEqual([])
  })

  it('cannot be kept where there is neither copy, and say so where both fail', async () => {
    expect(await openProfileStorage({ ...world, database: none, files: none })).toBeNull()
    const storage = await opened({ database: none })
    files.full = true
    await expect(storage.save(bike)).rejects.toThrow('No space left.')
  })

  it('survive one damaged copy; one that cannot be read is not listed and not written over', async () => {
    const storage = await opened()
    await storage.save(bike)
    const [name] = [...files.texts.keys()]
    files.texts.set(name!, '{"half":')
    expect(await storage.list()).toEqual([bike])

    const later = makeRecord({ id: bike.id, title: 'later' }, '{"profile":2,"kind":"bike"}', 7, 2000)
    const database = (await openDatabase())!
    await database.write(bike.id, later)
    files.texts.clear()
    expect(await storage.list()).toEqual([])
    await storage.save(bike)
    expect(await storage.list()).toEqual([bike])
    expect(await database.read(`${bike.id}.unread`)).toEqual(later)
    database.close()
  })
})

describe('the text of a profile', () => {
  it('gives the profile back', () => {
    for (const profile of [bike, riders, rules]) expect(readProfile(writeProfile(profile))).toEqual(profile)
  })

  it('is refused where it breaks what a ride would not hold', () => {
    const spoiled: Profile[] = [
      { ...bike, bike: { ...bike.bike, base: 40 } },
      {
        ...bike,
        bike: {
          ...bike.bike,
          points: [
            [0, 50],
            [1, 40],
          ],
        },
      },
      { ...riders, riders: [] },
      { ...riders, riders: [{ ...DEFAULT_RIDERS[0]!, maxHr: 65 }] },
      { ...rules, avoidMoves: [''] },
    ]
    for (const profile of spoiled) expect(readProfile(writeProfile(profile))).toBeNull()
    for (const text of ['', '{', 'null', '{"profile":1,"kind":"songs","id":"x","name":"x"}', writeProfile(bike).replace('1', '2')]) {
      expect(readProfile(text)).toBeNull()
    }
  })
})
