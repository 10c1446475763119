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
    await take(other('notes.pdf'))
    expect(opened).toEqual(['tuesday.ride.json', 'notes.pdf'])
  })

  it('is read for the shelf where it is music, which is said with a way there, and what is neither stays out', async () => {
    await take(music('a.mp3'), other('cover.jpg'), music('b.mp3'))
    expect([opened, heard]).toEqual([[], ['a.mp3', 'b.mp3']])
    expect(store.getState().notice).toEqual({
      kind: 'info',
      sentence: '2 songs go to my songs as they’re read.',
      details: ['Skipped “cover.jpg”: not a ride, music, or a list.'],
      offer: { label: 'open my songs', place: 'songs' },
    })
    expect(store.getState().filesLeftOut).toBe(1)
  })

  it('goes both ways where it is both, and what opening the ride had to say stays', async () => {
    const files = [music('a.mp3'), other('tuesday.ride.json')]
    await takeFiles(files, store, async () => store.getState().notify({ kind: 'info', sentence: 'It differs.' }))
    expect(heard).toEqual(['a.mp3'])
    expect(store.getState().notice).toMatchObject({ sentence: 'It differs.', details: ['1 song goes to my songs once it’s read.'] })
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
    expect(store.getState().notice?.sentence).toBe('This window can’t save anything (private browsing?), so no songs.')
  })
})

describe('a list of songs that is dropped', () => {
  const LIST = '#EXTM3U\n#EXTINF:225,Salt Lantern - Low Tide\nlow-tide.mp3\n'
  // Systems call a playlist a kind of sound.
  const list = (name: string, text: BlobPart = LIST) => new File([text], name, name.includes('.m3u') ? { type: 'audio/x-mpegurl' } : {})

  it.each(['set.m3u', 'set.m3u8', 'set.xspf', 'set.CSV', 'set.tsv', 'set.txt'])(
    'is one by the name %s, for the new ride at the start',
    async (name) => {
      await take(list(name))
      expect([opened, heard, store.getState().notice]).toEqual([[], [], null])
      expect(store.getState().droppedList).toEqual({ text: LIST, for: 'start' })
      expect(store.getState().announcement).toBe(`“${name}” is a list of 1 song`)
    },
  )

  it('is for the shelf in every other place, with a way there where it is elsewhere', async () => {
    store.getState().setPlace('songs')
    await take(list('set.m3u'))
    expect([store.getState().droppedList?.for, store.getState().notice, store.getState().filesLeftOut]).toEqual(['songs', null, 0])
    store.getState().setPlace('log')
    await take(list('set.m3u'))
    expect(store.getState().notice).toEqual({
      kind: 'info',
      sentence: '“set.m3u” is a list of 1 song; it’s waiting in my songs.',
      offer: { label: 'open my songs', place: 'songs' },
    })
    expect(store.getState().takeList('start')).toBeNull()
    expect(store.getState().takeList('songs')).toBe(LIST)
    expect(store.getState().takeList('songs')).toBeNull()
  })

  it('goes its way beside a ride and music, and what is one too many is named', async () => {
    const files = [list('a.csv'), music('a.mp3'), other('a.ride.json'), list('b.csv'), other('b.ride.json'), other('readme.txt')]
    await takeFiles(files, store, async ({ name }) => {
      opened.push(name)
      store.getState().setPlace('draft')
    })
    expect([opened, heard, store.getState().droppedList?.for]).toEqual([['a.ride.json'], ['a.mp3'], 'songs'])
    expect(store.getState().notice).toEqual({
      kind: 'info',
      sentence: '1 song goes to my songs once it’s read.',
      details: [
        '“a.csv” is a list of 1 song; it’s waiting in my songs.',
        'Skipped “readme.txt”: not a ride, music, or a list.',
        'Only one ride opens at a time; skipped “b.ride.json”.',
        'Only one list is read at a time; skipped “b.csv”.',
      ],
      offer: { label: 'open my songs', place: 'songs' },
    })
  })

  it('is taken for a new ride where no songs can be kept', async () => {
    store = aStore(false)
    await take(list('set.m3u'))
    expect(store.getState().droppedList?.for).toBe('start')
  })

  it('is refused by its name where it is far too long', async () => {
    await take(list('set.csv', new Uint8Array(4_000_001)))
    expect(store.getState()).toMatchObject({
      droppedList: null,
      notice: { kind: 'problem', sentence: '“set.csv” is too large for a list of songs.' },
    })
  })

  it.each([
    ['UTF-8', [...new TextEncoder().encode('Café')]],
    ['the letters of Western Europe', [0x43, 0x61, 0x66, 0xe9]],
    ['UTF-16 of either order', [0xff, 0xfe, 0x43, 0, 0x61, 0, 0x66, 0, 0xe9, 0]],
    ['UTF-16 of either order', [0xfe, 0xff, 0, 0x43, 0, 0x61, 0, 0x66, 0, 0xe9]],
  ])('is read in %s', async (_letters, bytes) => {
    await take(list('set.txt', Uint8Array.from(bytes)))
    expect(store.getState().droppedList?.text).toBe('Café')
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
