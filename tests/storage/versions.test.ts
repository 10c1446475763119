import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { namedVersion, receivedVersion, sentVersion, taughtVersion } from '#plan/kept/version.ts'
import type { Ride } from '#plan/model.ts'
import { openKeyedDatabase } from '#storage/keyedDatabase.ts'
import { openRideFiles } from '#storage/rideFiles.ts'
import { openVersionStorage } from '#storage/versionStorage.ts'
import { type MemoryFiles, memoryFiles, WritableFileHandle } from '#tests/support/memoryFiles.ts'
import { smallRide } from '#tests/support/smallRide.ts'

type VersionWorld = NonNullable<Parameters<typeof openVersionStorage>[0]>

/** The database this browser has had from the first version on; its name is never changed. */
const openDatabase = () => openKeyedDatabase('ridewright.versions', 'versions')

let files: MemoryFiles
let world: VersionWorld
let clock: number

beforeAll(() => vi.stubGlobal('FileSystemFileHandle', WritableFileHandle))
afterAll(() => vi.unstubAllGlobals())
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory()
  files = memoryFiles()
  clock = 0
  world = { now: () => ++clock, database: openDatabase, files: () => openRideFiles(files.root, 'versions') }
})

const opened = async (change: Partial<VersionWorld> = {}) => (await openVersionStorage({ ...world, ...change }))!
const none = async () => null

const ride = smallRide()
const titled = (title: string, id = ride.id): Ride => ({ ...ride, id, title })

describe('versions', () => {
  it('are listed newest first without their rides, and opened with them, from either copy', async () => {
    const storage = await opened()
    await storage.save(namedVersion(ride, 'before', 'v1'))
    await storage.save(sentVersion(ride))
    for (const again of [storage, await opened(), await opened({ files: none }), await opened({ database: none })]) {
      expect((await again.heads()).map(({ kind, at }) => [kind, at])).toEqual([
        ['sent', 2],
        ['named', 1],
      ])
      expect((await again.heads()).every((head) => !('ride' in head))).toBe(true)
      expect(await again.load('v1')).toEqual({ ...namedVersion(ride, 'before', 'v1'), at: 1 })
    }
  })

  it('of a ride handed over unchanged are one, at its latest time', async () => {
    const storage = await opened()
    for (let time = 0; time < 3; time++) await storage.save(sentVersion(ride))
    expect(await storage.heads()).toMatchObject([{ kind: 'sent', at: 3 }])
  })

  it('kept by themselves give way to newer ones of their ride; named ones and other rides’ stay', async () => {
    const storage = await opened()
    await storage.save(namedVersion(ride, 'dear', 'v1'))
    await storage.save(receivedVersion(titled('from elsewhere', 'theirs'), 'another'))
    for (let time = 0; time < 24 + 3; time++) await storage.save(sentVersion(titled(String(time))))
    const heads = await storage.heads()
    expect(heads.filter(({ kind }) => kind === 'sent').map(({ name }) => name)).toEqual(
      Array.from({ length: 24 }, (_, age) => String(24 + 2 - age)),
    )
    expect(heads.map(({ id }) => id)).toContain('v1')
    expect(heads.filter(({ rideId }) => rideId === 'another')).toHaveLength(1)
  })

  it('that were taught give way to those taught later, and to nothing else', async () => {
    const storage = await opened()
    await storage.save(sentVersion(ride))
    for (let time = 0; time < 12 + 3; time++) await storage.save(taughtVersion(titled(String(time))))
    await storage.save(taughtVersion(titled('14')))
    for (let time = 0; time < 24 + 3; time++) await storage.save(sentVersion(titled(`sent ${time}`)))
    const heads = await storage.heads()
    expect(heads.filter(({ kind }) => kind === 'taught').map(({ name }) => name)).toEqual(
      Array.from({ length: 12 }, (_, age) => String(12 + 2 - age)),
    )
    expect(heads.filter(({ kind }) => kind === 'sent')).toHaveLength(24)
  })

  it('put back keep their time', async () => {
    const storage = await opened()
    await storage.save({ ...namedVersion(ride, 'old', 'v1'), at: -5 })
    expect(await storage.load('v1')).toMatchObject({ at: -5 })
  })

  it('survive one damaged copy; one that cannot be read is not listed', async () => {
    const storage = await opened()
    await storage.save(namedVersion(ride, 'before', 'v1'))
    const [name] = [...files.texts.keys()]
    files.texts.set(name!, '{"half":')
    expect(await storage.load('v1')).toMatchObject({ name: 'before' })
    expect(await (await opened({ database: none })).heads()).toEqual([])
  })

  it('cannot be kept where there is neither copy, and say so where both fail', async () => {
    expect(await openVersionStorage({ ...world, database: none, files: none })).toBeNull()
    const storage = await opened({ database: none })
    files.full = true
    await expect(storage.save(sentVersion(ride))).rejects.toThrow('No space left.')
  })

  it('are removed', async () => {
    const storage = await opened()
    await storage.save(namedVersion(ride, 'before', 'v1'))
    await storage.remove('v1')
    expect(await (await opened()).heads()).toEqual([])
    expect(await storage.load('v1')).toBeNull()
  })
})
