import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import type { Ride } from '#plan/model.ts'
import { SAYS, saySaveFailed } from '#storage/messages.ts'
import { openStorage, type RideStorage } from '#storage/openStorage.ts'
import { openRideDatabase } from '#storage/rideDatabase.ts'
import { openRideFiles } from '#storage/rideFiles.ts'
import { makeRecord, readRecord } from '#storage/rideRecord.ts'
import type { WindowChannel } from '#storage/windowChannel.ts'
import { type MemoryFiles, memoryFiles, WritableFileHandle } from '#tests/support/memoryFiles.ts'
import { smallRide } from '#tests/support/smallRide.ts'

type StorageWorld = NonNullable<Parameters<typeof openStorage>[0]>

const ride = smallRide()
const titled = (title: string, id = ride.id): Ride => ({ ...ride, id, title })

let files: MemoryFiles
let clock: number
let world: StorageWorld

beforeAll(() => vi.stubGlobal('FileSystemFileHandle', WritableFileHandle))
afterAll(() => vi.unstubAllGlobals())
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory()
  files = memoryFiles()
  clock = 1000
  world = {
    now: () => clock++,
    database: openRideDatabase,
    files: () => openRideFiles(files.root),
    channel: () => null,
  }
})

/** A browser started anew over what the last one kept. */
const reopened = () => openStorage(world)
const without = (...gone: ('database' | 'files')[]): StorageWorld => ({
  ...world,
  ...Object.fromEntries(gone.map((copy) => [copy, async () => null])),
})
const loaded = async (storage: RideStorage, id = ride.id) => {
  const result = await storage.load(id)
  return result.ok ? result.ride : result.sentence
}
/** Puts anything at all under a ride's id into the database, as a crash or a stranger could. */
const spoilDatabase = async (id: string, value: unknown) => {
  const database = (await openRideDatabase())!
  if (value === undefined) await database.remove(id)
  else await database.write(id, value)
  database.close()
}

describe('saving and loading', () => {
  it('gives back the ride, from another start of the browser too', async () => {
    const storage = await openStorage(world)
    expect(storage.warning).toBeNull()
    await storage.save(ride)
    expect(await loaded(storage)).toEqual(ride)
    expect(await loaded(await reopened())).toEqual(ride)
  })

  it('keeps two whole copies', async () => {
    const storage = await openStorage(world)
    await storage.save(ride)
    expect(await loaded(await openStorage(without('database')))).toEqual(ride)
    expect(await loaded(await openStorage(without('files')))).toEqual(ride)
  })

  it('says that a ride is not here', async () => {
    expect(await (await openStorage(world)).load('nobody')).toEqual({ ok: false, sentence: SAYS.notHere, details: [] })
  })

  it('writes nothing when there is nothing new, so a ride only looked at keeps its place in the list', async () => {
    const first = await openStorage(world)
    const saved = await first.save(ride)
    expect(await first.save(structuredClone(ride), ride)).toMatchObject({ updated: !saved.deleted && saved.updated })
    const next = await reopened()
    const opened = await next.load(ride.id)
    expect(opened.ok && (await next.save(opened.ride, opened.ride))).toMatchObject({ updated: !saved.deleted && saved.updated })
  })

  it('lists newest first, and not what was removed', async () => {
    const storage = await openStorage(world)
    for (const name of ['one', 'two', 'three']) await storage.save(titled(name, name))
    await storage.save(titled('one, again', 'one'))
    await storage.remove('two')
    expect((await storage.list()).map(({ title }) => title)).toEqual(['one, again', 'three'])
    expect((await (await reopened()).list()).map(({ id }) => id)).toEqual(['one', 'three'])
    expect(await loaded(storage, 'two')).toBe(SAYS.notHere)
    await storage.remove('nobody')
  })

  it('keeps rides of any id apart', async () => {
    const storage = await openStorage(world)
    for (const id of ['a.b', 'a:b', 'a_b', 'A.b']) await storage.save(titled(id, id))
    const next = await openStorage(without('database'))
    for (const id of ['a.b', 'a:b', 'a_b', 'A.b']) expect(await loaded(next, id)).toMatchObject({ title: id })
  })

  it('carries out calls in the order they were made', async () => {
    const storage = await openStorage(world)
    const results = [
      storage.save(titled('1')),
      storage.save(titled('2')),
      storage.remove(ride.id),
      storage.save(titled('3')),
      storage.list(),
    ]
    await Promise.all(results)
    expect(await loaded(await reopened())).toMatchObject({ title: '3' })
  })
})

describe('after a crash', () => {
  it('takes the second copy when the database came back empty', async () => {
    await (await openStorage(world)).save(titled('kept'))
    globalThis.indexedDB = new IDBFactory()
    const next = await reopened()
    expect(await next.list()).toMatchObject([{ id: ride.id, title: 'kept' }])
    expect(await loaded(next)).toMatchObject({ title: 'kept' })
  })

  it('takes the newer of two copies, whichever it is', async () => {
    const storage = await openStorage(world)
    await storage.save(titled('first'))
    const [name, text] = [...files.texts][0]!
    await storage.save(titled('second'))
    files.texts.set(name, text)
    expect(await loaded(await reopened())).toMatchObject({ title: 'second' })
    await spoilDatabase(ride.id, JSON.parse(text))
    await storage.save(titled('third'))
    await spoilDatabase(ride.id, JSON.parse(text))
    expect(await loaded(await reopened())).toMatchObject({ title: 'third' })
  })

  it('goes on from the newer copy, so that what is saved next is newest', async () => {
    const storage = await openStorage(world)
    await storage.save(titled('1'))
    await storage.save(titled('2'))
    await spoilDatabase(ride.id, undefined)
    const next = await reopened()
    await next.save(titled('3'))
    expect(await loaded(await reopened())).toMatchObject({ title: '3' })
    expect(await loaded(await openStorage(without('files')))).toMatchObject({ title: '3' })
  })

  it.each([
    ['cut short', (text: string) => text.slice(0, -40)],
    ['empty', () => ''],
    ['with one letter changed', (text: string) => text.replace('small', 'smell')],
  ])('takes the older whole copy instead of one %s', async (_, spoil) => {
    await (await openStorage(world)).save(ride)
    const [name, text] = [...files.texts][0]!
    files.texts.set(name, spoil(text))
    expect(await loaded(await reopened())).toEqual(ride)
  })
})

describe('a ride that cannot be read', () => {
  const damaged = { ...makeRecord(ride, JSON.stringify(ride), 4, 99), title: 'tampered' }
  const tooNew = makeRecord(ride, JSON.stringify({ ...ride, schema: 999 }), 4, 99)

  it('is reported with a sentence and stays where it is', async () => {
    await spoilDatabase(ride.id, damaged)
    const storage = await openStorage(without('files'))
    expect(await storage.load(ride.id)).toEqual({ ok: false, sentence: SAYS.unreadable, details: [SAYS.damaged] })
    expect(await storage.list()).toEqual([{ id: ride.id, title: ride.id, updated: 0, problem: SAYS.unreadable }])
    expect(await (await openRideDatabase())!.read(ride.id)).toEqual(damaged)
  })

  it('says what is wrong with a document that is whole', async () => {
    await spoilDatabase(ride.id, tooNew)
    const result = await (await openStorage(without('files'))).load(ride.id)
    expect(result).toMatchObject({ ok: false, sentence: SAYS.unreadable })
    expect(!result.ok && result.details.length).toBeGreaterThan(0)
    expect(!result.ok && result.details).not.toContain(SAYS.damaged)
  })

  it.each([damaged, tooNew, 'not a record', 17])('is never written over: %#', async (value) => {
    await spoilDatabase(ride.id, value)
    const storage = await openStorage(world)
    await storage.save(titled('mine'))
    expect(await loaded(storage)).toMatchObject({ title: 'mine' })
    expect(await (await openRideDatabase())!.read(`${ride.id}.unread`)).toEqual(value)
    expect(await storage.list()).toHaveLength(2)
  })

  it('hinders no other ride', async () => {
    const storage = await openStorage(world)
    await storage.save(titled('good', 'good'))
    await spoilDatabase('bad', damaged)
    files.texts.set('worse.json', '{')
    expect((await storage.list()).map(({ id, problem }) => [id, problem !== undefined])).toEqual([
      ['good', false],
      ['bad', true],
      ['worse', true],
    ])
  })
})

describe('where the browser keeps less', () => {
  it('works with either copy alone, without a warning', async () => {
    for (const gone of ['database', 'files'] as const) {
      const storage = await openStorage(without(gone))
      expect(storage.warning).toBeNull()
      await storage.save(titled(gone, gone))
      expect(await loaded(storage, gone)).toMatchObject({ title: gone })
    }
  })

  it('says so where there is neither', async () => {
    const storage = await openStorage(without('database', 'files'))
    expect(storage.warning).toBe(SAYS.nothingKept)
    expect(await storage.list()).toEqual([])
    expect(await storage.lastOpened()).toBeNull()
    await storage.markOpened('x')
    const error = await storage.save(ride).catch((reason: unknown) => reason)
    expect(saySaveFailed(error)).toBe(SAYS.nothingKept)
  })

  it('finds neither where asking for them fails', async () => {
    vi.stubGlobal('indexedDB', { open: () => { throw new DOMException('no', 'SecurityError') } }) // biome-ignore format: one row
    expect(await openRideDatabase()).toBeNull()
    expect(await openRideFiles(() => Promise.reject(new DOMException('no', 'SecurityError')))).toBeNull()
  })

  it('is content with one copy written, and fails when none could be', async () => {
    files.full = true
    const storage = await openStorage(world)
    await storage.save(ride)
    expect(await loaded(await reopened())).toEqual(ride)
    const alone = await openStorage(without('database'))
    const error = await alone.save(titled('lost', 'lost')).catch((reason: unknown) => reason)
    expect(saySaveFailed(error)).toBe(SAYS.full)
    expect(saySaveFailed(new Error('?'))).toBe(SAYS.notSaved)
    files.full = false
    await alone.save(titled('lost', 'lost'))
    expect(await loaded(alone, 'lost')).toMatchObject({ title: 'lost' })
  })
})

describe('the second copy', () => {
  it('that could not be written is told, and made again by the next save that changes nothing', async () => {
    const storage = await openStorage(world)
    files.full = true
    expect(await storage.save(ride)).toMatchObject({ copies: 1 })
    expect(await storage.save(ride, ride)).toMatchObject({ copies: 1 })
    files.full = false
    expect(await storage.save(ride, ride)).toMatchObject({ copies: 2 })
    expect(await loaded(await openStorage(without('database')))).toEqual(ride)
  })

  it('of every ride is made again where it is missing or behind', async () => {
    const storage = await openStorage(world)
    for (const id of ['gone', 'behind', 'whole']) await storage.save(titled('first', id))
    const old = files.texts.get('behind.json')!
    await storage.save(titled('second', 'behind'))
    files.texts.set('behind.json', old)
    files.texts.delete('gone.json')
    await spoilDatabase('whole', undefined)
    await storage.mend()
    for (const copy of ['database', 'files'] as const) {
      const one = await openStorage(without(copy))
      expect([await loaded(one, 'gone'), await loaded(one, 'behind'), await loaded(one, 'whole')]).toMatchObject([
        { title: 'first' },
        { title: 'second' },
        { title: 'first' },
      ])
    }
  })
})

describe('the ride left open', () => {
  it('is remembered, and that none was', async () => {
    const storage = await openStorage(world)
    expect(await storage.lastOpened()).toBeNull()
    await storage.markOpened('a')
    expect(await (await reopened()).lastOpened()).toBe('a')
    await storage.markOpened(null)
    expect(await (await reopened()).lastOpened()).toBeNull()
  })

  it('is the newest one where the database came back empty', async () => {
    const storage = await openStorage(world)
    await storage.save(titled('a', 'a'))
    await storage.save(titled('b', 'b'))
    await storage.markOpened('a')
    globalThis.indexedDB = new IDBFactory()
    expect(await (await reopened()).lastOpened()).toBe('b')
  })

  it('is the newest one where only files are kept', async () => {
    const storage = await openStorage(without('database'))
    await storage.save(titled('a', 'a'))
    await storage.save(titled('b', 'b'))
    expect(await storage.lastOpened()).toBe('b')
  })
})

describe('two windows', () => {
  /** A window that has the ride open, and what it is made from. */
  async function opened(storage: RideStorage) {
    const result = await storage.load(ride.id)
    let base = result.ok ? result.ride : ride
    return {
      save: async (change: (now: Ride) => Ride) => {
        const outcome = await storage.save(change(base), base)
        if (!outcome.deleted) base = outcome.stored
        return outcome
      },
    }
  }
  const setTitle = (title: string) => (now: Ride) => ({ ...now, title })

  it('lose nothing of either: what only one changed stands, saved by whichever', async () => {
    const [first, second] = [await openStorage(world), await openStorage(world)]
    await first.save(ride)
    const [mine, theirs] = [await opened(first), await opened(second)]
    for (let turn = 1; turn <= 10; turn++) {
      await mine.save(setTitle(`title ${turn}`))
      await theirs.save((now) => ({ ...now, aim: `aim ${turn}` }))
    }
    expect(await loaded(await reopened())).toMatchObject({ title: 'title 10', aim: 'aim 10' })
  })

  it('tell what both changed, with the one that saves last standing', async () => {
    const [first, second] = [await openStorage(world), await openStorage(world)]
    await first.save(ride)
    const [mine, theirs] = [await opened(first), await opened(second)]
    expect(await mine.save(setTitle('mine'))).toMatchObject({ merged: null })
    const outcome = await theirs.save(setTitle('theirs'))
    expect(outcome).toMatchObject({ stored: { title: 'theirs' }, merged: { merge: { conflicts: [{ field: 'title' }] } } })
    expect(await mine.save((now) => now)).toMatchObject({ stored: { title: 'theirs' }, merged: { merge: { conflicts: [] } } })
  })

  it('write nothing where they only read each other, so that neither sets the other off', async () => {
    const [first, second] = [await openStorage(world), await openStorage(world)]
    await first.save(ride)
    const [mine, theirs] = [await opened(first), await opened(second)]
    const saved = await mine.save(setTitle('mine'))
    const read = await theirs.save((now) => now)
    expect(read).toMatchObject({ updated: !saved.deleted && saved.updated, stored: { title: 'mine' } })
    expect(await mine.save((now) => now)).toMatchObject({ updated: !saved.deleted && saved.updated })
  })

  it('a ride that one deletes is not saved by the other, unless as a new one', async () => {
    const [first, second] = [await openStorage(world), await openStorage(world)]
    await first.save(ride)
    const theirs = await opened(second)
    await first.remove(ride.id)
    expect(await theirs.save(setTitle('still typing'))).toEqual({ deleted: true })
    expect(await first.list()).toEqual([])
    await second.save(titled('kept after all'))
    expect(await first.list()).toMatchObject([{ title: 'kept after all' }])
  })

  it('a ride that is gone with everything else is saved again, and that is said', async () => {
    const storage = await openStorage(world)
    await storage.save(ride)
    const mine = await opened(storage)
    files.texts.clear()
    await spoilDatabase(ride.id, undefined)
    const database = (await openRideDatabase())!
    await database.writeMark('made', '')
    database.close()
    expect(await storage.countCopies(ride.id)).toBe(0)
    expect(await mine.save(setTitle('again'))).toMatchObject({ deleted: false, wasCleared: true, copies: 2 })
    expect(await loaded(await reopened())).toMatchObject({ title: 'again' })
    expect(await mine.save(setTitle('later'))).toMatchObject({ wasCleared: false })
  })

  it('hear of each other', async () => {
    const listeners = new Set<(id: string) => void>()
    const channel = (): WindowChannel => {
      const own = new Set<(id: string) => void>()
      return {
        tell: (id) => {
          for (const listener of listeners) if (!own.has(listener)) listener(id)
        },
        listen: (listener) => {
          own.add(listener)
          listeners.add(listener)
          return () => void listeners.delete(listener)
        },
        close: () => undefined,
      }
    }
    const [mine, theirs] = [await openStorage({ ...world, channel }), await openStorage({ ...world, channel })]
    const heard = vi.fn()
    const stop = mine.onSavedElsewhere(heard)
    await mine.save(ride)
    expect(heard).not.toHaveBeenCalled()
    await theirs.save(titled('theirs'))
    expect(heard.mock.calls).toEqual([[ride.id]])
    stop()
    await theirs.save(titled('again'))
    expect(heard).toHaveBeenCalledTimes(1)
  })
})

describe('the seal of a record', () => {
  const record = makeRecord(ride, '{}', 3, 5)

  it('breaks with any change', () => {
    expect(readRecord(record)).toEqual(record)
    for (const change of [{ id: 'x' }, { title: 'x' }, { revision: 4 }, { updated: 6 }, { text: '{ }' }, { seal: '' }])
      expect(readRecord({ ...record, ...change })).toBeNull()
  })

  it.each([null, undefined, 4, 'text', [], {}, { ...record, revision: '3' }, { ...record, text: undefined }])('refuses %o', (value) => {
    expect(readRecord(value)).toBeNull()
  })
})
