import 'fake-indexeddb/auto'
import { expect, it } from 'vitest'
import { openSoundStorage } from '#storage/soundStorage.ts'

const sound = { id: 'print', lengthSeconds: 2, peaks: new Uint8Array([3, 200]), loudness: new Float32Array([-20, -14]) }

it('looks and files of sounds are kept apart, found by fingerprint, and taken away one without the other', async () => {
  const storage = (await openSoundStorage())!
  await storage.save(sound)
  expect(await storage.load('print')).toEqual(sound)
  expect(await storage.load('another')).toBeNull()
  expect(await storage.listFiles()).toEqual([])
  await storage.saveFile('print', new Blob(['music']))
  expect(await storage.listFiles()).toEqual(['print'])
  await storage.removeFile('print')
  expect(await storage.listFiles()).toEqual([])
  expect(await storage.load('print')).toEqual(sound)
})

it('a value that is no sound is not taken for one, and a window that keeps nothing has no store', async () => {
  const values = new Map<string, unknown>([['odd', { id: 'odd', lengthSeconds: 3, peaks: [1, 2] }]])
  const database = { read: async (id: string) => values.get(id) } as never
  const storage = (await openSoundStorage({ looks: async () => database, files: async () => database }))!
  expect(await storage.load('odd')).toBeNull()
  expect(await storage.loadFile('odd')).toBeNull()
  expect(await openSoundStorage({ looks: async () => null, files: async () => null })).toBeNull()
})
