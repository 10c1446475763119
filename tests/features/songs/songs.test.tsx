// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { ShelfSongs } from '#features/drafting/panel/section/ShelfSongs.tsx'
import { classesOf } from '#features/songs/classesOf.ts'
import { SongsPlace } from '#features/songs/SongsPlace.tsx'
import { taughtBySong } from '#features/songs/taughtBySong.ts'
import { readSongList } from '#formats/readSongList.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { tempoOf } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import type { Hearing } from '#plan/songs/heardSong.ts'
import { type ShelfSong, songKey } from '#plan/songs/shelfSong.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { HearSong } from '#store/ports.ts'
import { heardFile } from '#tests/support/heardFile.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { aBlock, aSection, aSong, countedIds, smallRide } from '#tests/support/smallRide.ts'

let page: Rendered
afterEach(() => {
  page?.close()
  vi.unstubAllGlobals()
})

function shelfOf(...songs: ShelfSong[]) {
  const kept = new Map(songs.map((song) => [song.id, song]))
  return {
    kept,
    list: async () => [...kept.values()],
    save: async (song: ShelfSong) => void kept.set(song.id, song),
    remove: async (id: string) => void kept.delete(id),
  }
}

const kept = (id: string, change: Parameters<typeof aSong>[1]): ShelfSong => ({ id, song: { ...aSong(id, change), id } })

describe('the songs place', () => {
  it('takes a list in, finds in it, and takes a song away', async () => {
    const shelf = shelfOf()
    const store = createAppStore({ newId: countedIds(), shelf: null, songs: shelf })
    page = rendered(store, <SongsPlace readList={readSongList} />)
    await page.settle()
    expect(page.text()).toContain('No songs yet.')
    page.type(page.find('textarea', 'songs'), 'title,artist,bpm,length\nLow Tide,Salt Lantern,128,3:45\nBrickworks,Nine Tin Kites,90,3:10')
    page.press(page.find('button', 'add 2 songs'))
    await page.settle()
    expect([...shelf.kept.values()].map(({ song }) => song.title)).toEqual(['Low Tide', 'Brickworks'])
    expect(page.text()).toContain('32 · 64 · 128')
    page.type(page.host.querySelector<HTMLElement>('input[type="search"]')!, 'kites')
    expect(page.host.querySelectorAll('tbody tr')).toHaveLength(1)
    page.press(page.find('button', 'remove Brickworks from my songs'))
    await page.settle()
    expect(shelf.kept.size).toBe(1)
  })
})

describe('a tempo few songs have', () => {
  it('is asked about where a kept song is edited, on a line that is there before', async () => {
    const shelf = shelfOf(kept('slow', { title: 'Slow', grid: gridOfTempo(40) }), kept('usual', { title: 'Usual', grid: gridOfTempo(120) }))
    const store = createAppStore({ newId: countedIds(), shelf: null, songs: shelf })
    await store.getState().refreshSongs()
    page = rendered(store, <SongsPlace readList={readSongList} />)
    await page.settle()
    const said = () => document.querySelector('.shelf-tempo-said')?.textContent
    page.press(page.find('button', 'edit Slow'))
    expect(said()).toBe('40 bpm is slower than songs are usually counted (48 to 215 bpm); is it 80?')
    page.press(page.find('button', 'cancel'))
    page.press(page.find('button', 'edit Usual'))
    expect(said()).toBe('')
  })
})

const heardAs = (print: string, title: string) => heardFile(title, print)

describe('files on their way to the shelf', () => {
  it('each say where they stand, can be stopped, and once heard be read at half or double and put right', async () => {
    const shelf = shelfOf()
    const says: ((hearing: Hearing) => void)[] = []
    const hearSong: HearSong = (_file, _hints, onChange) => {
      says.push(onChange)
      return { abort: () => onChange({ kind: 'aborted' }) }
    }
    const store = createAppStore({ newId: countedIds(), shelf: null, songs: shelf, hearSong })
    page = rendered(store, <SongsPlace readList={readSongList} />)
    await page.settle()
    const give = (...names: string[]) => store.getState().hearForShelf(names.map((name) => new File(['x'], name)))
    act(() => give('a.mp3', 'b.mp3', 'c.mp3', 'cover.jpg'))
    act(() => says[1]!({ kind: 'analysing', share: 0.25 }))
    expect(page.text()).toContain('0 of 3 files read. Skipped 1 file (not audio).')
    expect(page.host.querySelector('progress[aria-label="reading b.mp3"]')!.getAttribute('value')).toBe('0.25')
    page.press(page.find('button', 'stop reading c.mp3'))
    expect(document.activeElement!.className).toBe('shelf-queue')
    act(() => says[1]!({ kind: 'failed', sentence: '“b.mp3” is torn.' }))
    // What needs somebody stands first.
    expect([...page.host.querySelectorAll('[data-hearing]')].map((one) => one.textContent)).toEqual([
      '“b.mp3” is torn.',
      '“a.mp3” is waiting.stop',
      '“c.mp3” was stopped.',
    ])
    act(() => says[0]!(heardAs('print', 'Lamp')))
    await page.settle()
    expect(page.text()).toContain('1 file read, 1 can’t be read, 1 stopped.')
    expect(page.host.querySelector('tbody tr')!.textContent).toContain('about 5')
    page.press(page.find('button', 'half: 64 bpm'))
    await page.settle()
    expect(tempoOf([...shelf.kept.values()][0]!.song.grid!)).toBe(64)
    expect(page.find('button', 'half: 64 bpm').getAttribute('aria-pressed')).toBe('true')
    page.press(page.find('button', 'double: 256 bpm'))
    await page.settle()
    expect(tempoOf([...shelf.kept.values()][0]!.song.grid!)).toBe(256)
    page.press(page.find('button', 'double: 256 bpm'))
    await page.settle()
    expect(tempoOf([...shelf.kept.values()][0]!.song.grid!)).toBe(128)
    page.press(page.find('button', 'clear the list'))
    expect(page.host.querySelectorAll('[data-hearing]')).toHaveLength(0)
  })
})

describe('all of a kept song', () => {
  it('can be put right: beats, marks, quiet windows, energy as the sound suggests it, and its file be kept', async () => {
    HTMLDialogElement.prototype.showModal ??= () => {}
    const files = new Map<string, Blob>()
    const shelf = shelfOf(kept('k', { title: 'Lamp', fingerprint: 'print', grid: gridOfTempo(120, 0.5) }))
    const store = createAppStore({
      newId: countedIds(),
      shelf: null,
      songs: shelf,
      sounds: {
        load: async (id) => ({ id, lengthSeconds: 240, peaks: new Uint8Array(), loudness: new Float32Array(240).fill(-9) }),
        save: async () => {},
        listFiles: async () => [...files.keys()],
        loadFile: async (id) => files.get(id) ?? null,
        saveFile: async (id, file) => void files.set(id, file),
        removeFile: async (id) => void files.delete(id),
      },
    })
    store.getState().haveSoundFile('print', new Blob(['x'.repeat(8_200_000)]))
    page = rendered(store, <SongsPlace readList={readSongList} />)
    await page.settle()
    page.press(page.find('button', 'edit Lamp'))
    await page.settle()
    const commit = (label: string, text: string) => {
      const field = page.host.querySelector<HTMLElement>(`dialog :is(input, textarea)#${CSS.escape(idOf(label))}`)!
      page.type(field, text)
      act(() => field.dispatchEvent(new FocusEvent('focusout', { bubbles: true })))
    }
    const idOf = (label: string) =>
      [...page.host.querySelectorAll('dialog label')].find((one) => one.textContent === label)!.getAttribute('for')!
    commit('first beat', '0.75')
    commit('markers', '1 intro\n9 chorus')
    commit('no-talk zones', '9–12')
    page.press(page.find('button', 'use 5'))
    page.press(page.host.querySelector<HTMLElement>('dialog input[type="checkbox"]')!)
    page.press(page.find('label', /save its file on this device \(8\.2 MB\)/).querySelector('input')!)
    await page.settle()
    expect([...files.keys()]).toEqual(['print'])
    page.press(page.find('button', 'save to my songs'))
    await page.settle()
    expect(shelf.kept.get('k')).toMatchObject({
      energy: 5,
      song: {
        clean: true,
        marks: [
          { count: 0, label: 'intro' },
          { count: 64, label: 'chorus' },
        ],
        quiet: [{ from: 64, to: 96 }],
      },
    })
    expect(shelf.kept.get('k')!.song.grid!.anchors[0]).toEqual([0, 0.75])
  })
})

describe('where a song is used', () => {
  it('is told class by class, the newest first', () => {
    const entry = (id: string, day: string, outcome: 'taught' | 'skipped') =>
      ({ id, day, title: id, sections: [{ title: 'Low Tide', song: true, outcome }] }) as unknown as TaughtClass
    const log = [entry('a', '2026-11-03', 'taught'), entry('b', '2026-11-17', 'taught'), entry('c', '2026-11-10', 'skipped')]
    expect(classesOf(songKey({ title: 'LOW tide' }), log).map(({ id }) => id)).toEqual(['b', 'a'])
  })

  it('is counted from the classes taught, skipped songs left out', () => {
    const entry = (day: string, outcome: 'taught' | 'skipped') =>
      ({ day, sections: [{ id: 's', title: 'Low Tide', song: true, outcome, seconds: 200, blocks: [] }] }) as unknown as TaughtClass
    const found = taughtBySong([entry('2026-11-03', 'taught'), entry('2026-11-10', 'taught'), entry('2026-11-17', 'skipped')])
    expect(found.get(songKey({ title: 'low tide' }))).toEqual({ times: 2, last: '2026-11-10' })
  })
})

describe('songs of the shelf for a section', () => {
  it('stand by how well they fit, with the reasons, and swap with the legs kept', async () => {
    const shelf = shelfOf(
      kept('far', { title: 'Far', grid: gridOfTempo(97) }),
      kept('same', { title: 'Same Legs', grid: gridOfTempo(60), lengthSeconds: 480 }),
    )
    const store = createAppStore({ newId: countedIds(), shelf: null, songs: shelf })
    await store.getState().refreshSongs()
    const section = aSection('s', { song: aSong('now', { grid: gridOfTempo(120) }), blocks: [aBlock('a')] })
    store.getState().openRide({ ...smallRide(), sections: [section] })
    page = rendered(store, <ShelfSongs section={section} onTaken={() => {}} />)
    const [first] = page.host.querySelectorAll('li')
    expect(first!.textContent).toContain('Same Legs')
    expect(first!.textContent).toContain('the same cadence, same length')
    page.press(page.find('button', 'Same Legs'))
    expect(page.text()).toContain('keeps its counts')
    // Pressed again, it is left.
    page.press(page.find('button', 'Same Legs'))
    expect(page.text()).not.toContain('keeps its counts')
    page.press(page.find('button', 'Same Legs'))
    page.press(page.find('button', 'replace the song'))
    expect(store.getState().ride!.sections[0]!.song).toMatchObject({ title: 'Same Legs', strikesPerBeat: 2 })
    expect(store.getState().past).toHaveLength(1)
  })
})
