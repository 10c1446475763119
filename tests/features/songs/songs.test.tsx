// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest'
import { ShelfSongs } from '#features/drafting/panel/section/ShelfSongs.tsx'
import { SongsPlace } from '#features/songs/SongsPlace.tsx'
import { taughtBySong } from '#features/songs/taughtBySong.ts'
import { readSongList } from '#formats/readSongList.ts'
import { gridOfTempo } from '#plan/beatGrid.ts'
import { type ShelfSong, songKey } from '#plan/shelfSong.ts'
import type { TaughtClass } from '#plan/taught.ts'
import { createAppStore } from '#store/createAppStore.ts'
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
    page.press(page.find('button', 'put 2 songs on the shelf'))
    await page.settle()
    expect([...shelf.kept.values()].map(({ song }) => song.title)).toEqual(['Low Tide', 'Brickworks'])
    expect(page.text()).toContain('32 · 64 · 128')
    page.type(page.host.querySelector<HTMLElement>('input[type="search"]')!, 'kites')
    expect(page.host.querySelectorAll('tbody tr')).toHaveLength(1)
    page.press(page.find('button', 'remove Brickworks from the shelf'))
    await page.settle()
    expect(shelf.kept.size).toBe(1)
  })
})

describe('where a song is used', () => {
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
    expect(first!.textContent).toContain('the same cadence, as long')
    page.press(page.find('button', 'Same Legs'))
    expect(page.text()).toContain('keeps its counts')
    page.press(page.find('button', 'swap the song'))
    expect(store.getState().ride!.sections[0]!.song).toMatchObject({ title: 'Same Legs', strikesPerBeat: 2 })
    expect(store.getState().past).toHaveLength(1)
  })
})
