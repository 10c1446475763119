import { beforeEach, describe, expect, it } from 'vitest'
import { filesOfDrop } from '#app/filesOfDrop.ts'
import { takeFiles } from '#app/takeFiles.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { AppStore } from '#store/state.ts'
import { countedIds } from '#tests/support/smallRide.ts'

const music = (name: string) => new File(['x'], name, { type: 'audio/mpeg' })
const other = (name: string) => new File(['x'], name)

let heard: string[]
let opened: string[]
let store: AppStore

const aStore = (keeps = true) =>
  createAppStore({
    newId: countedIds(),
    shelf: null,
    songs: keeps ? { list: async () => [], save: async () => {}, remove: async () => {} } : null,
    hearSong: (file) => {
      heard.push(file.name)
      return { abort: () => {} }
    },
  })
const take = (...files: File[]) =>
  takeFiles(files, store, async ({ name }) => {
    opened.push(name)
  })

beforeEach(() => {
  heard = []
  opened = []
  store = aStore()
})

describe('what is dropped on the page', () => {
  it('is a ride where it is no music, as ever', async () => {
    await take(other('tuesday.ride.json'))
    expect([opened, heard, store.getState().notice]).toEqual([['tuesday.ride.json'], [], null])
    await take(other('notes.txt'))
    expect(opened).toEqual(['tuesday.ride.json', 'notes.txt'])
  })

  it('is read for the shelf where it is music, which is said with a way there, and what is neither stays out', async () => {
    await take(music('a.mp3'), other('cover.jpg'), music('b.mp3'))
    expect([opened, heard]).toEqual([[], ['a.mp3', 'b.mp3']])
    expect(store.getState().notice).toEqual({
      kind: 'info',
      sentence: '2 songs go to the shelf as they are read. 1 file that is no music stayed out.',
      offer: { label: 'open the songs', place: 'songs' },
    })
    expect(store.getState().filesLeftOut).toBe(1)
  })

  it('goes both ways where it is both, and what opening the ride had to say stays', async () => {
    const files = [music('a.mp3'), other('tuesday.ride.json')]
    await takeFiles(files, store, async () => store.getState().notify({ kind: 'info', sentence: 'It differs.' }))
    expect(heard).toEqual(['a.mp3'])
    expect(store.getState().notice).toMatchObject({ sentence: 'It differs.', details: ['1 song goes to the shelf once it is read.'] })
    expect(store.getState().filesLeftOut).toBe(0)
  })

  it('needs no words in the place of songs, where each file shows', async () => {
    store.getState().setPlace('songs')
    await take(music('a.mp3'), other('notes.txt'))
    expect([opened, heard, store.getState().notice]).toEqual([[], ['a.mp3'], null])
  })

  it('is refused in words where no songs can be kept', async () => {
    store = aStore(false)
    await take(music('a.mp3'))
    expect(heard).toEqual([])
    expect(store.getState().notice?.sentence).toBe('Nothing can be kept in this window, so no songs either.')
  })
})

describe('the files of a drop', () => {
  const fileEntry = (name: string, works = true) => ({
    isFile: true,
    isDirectory: false,
    name,
    file: (take: (file: File) => void, fail: () => void) => (works ? take(other(name)) : fail()),
  })
  const folderEntry = (name: string, inside: object[]) => ({
    isFile: false,
    isDirectory: true,
    name,
    // Two at a time, as browsers hand out a hundred.
    createReader: () => {
      const left = [...inside]
      return { readEntries: (take: (entries: object[]) => void) => take(left.splice(0, 2)) }
    },
  })
  const dropped = (...entries: (object | null)[]) =>
    ({ items: entries.map((entry) => ({ webkitGetAsEntry: () => entry })), files: [other('plain.mp3')] }) as unknown as DataTransfer

  it('are those of its folders too, at any depth and by name, without what cannot be reached', async () => {
    const album = folderEntry('album', [
      fileEntry('10.mp3'),
      fileEntry('2.mp3'),
      folderEntry('cd 2', [fileEntry('b.mp3'), fileEntry('gone.mp3', false), fileEntry('a.mp3')]),
    ])
    const files = await filesOfDrop(dropped(fileEntry('x.mp3'), album))
    expect(files.map(({ name }) => name)).toEqual(['x.mp3', '2.mp3', '10.mp3', 'a.mp3', 'b.mp3'])
  })

  it('are the plain files where none come from a disk', async () => {
    expect((await filesOfDrop(dropped(null))).map(({ name }) => name)).toEqual(['plain.mp3'])
  })
})
