// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { SectionPanel } from '#features/drafting/panel/section/SectionPanel.tsx'
import { useDrives } from '#features/drafting/proposals/useDrives.ts'
import { type Section, tempoOf } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import type { BeatHints, Hearing } from '#plan/songs/heardSong.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { HearSong } from '#store/ports.ts'
import { useApp } from '#store/useApp.ts'
import { heardFile } from '#tests/support/heardFile.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { aBlock, aSection, aSong, countedIds, smallRide } from '#tests/support/smallRide.ts'

let page: Rendered
afterEach(() => {
  page?.close()
  vi.unstubAllGlobals()
})

const heardAs = (print: string, bpm: number) => heardFile(print, print, bpm)

/** A section's panel with an ear that hears when told to. */
async function open(section: Section, songs: ShelfSong[] = []) {
  const asked: { hints: BeatHints; say: (hearing: Hearing) => void; known: ((print: string) => Promise<boolean>) | undefined }[] = []
  const hearSong: HearSong = (_file, hints, say, options) => {
    asked.push({ hints, say, known: options?.isKnown })
    return { abort: () => {} }
  }
  const store = createAppStore({
    newId: countedIds('new'),
    shelf: null,
    hearSong,
    songs: { list: async () => songs, save: async () => {}, remove: async () => {} },
    sounds: {
      load: async (id) => ({ id, lengthSeconds: 200, peaks: new Uint8Array(), loudness: new Float32Array(200).fill(-9) }),
      save: async () => {},
      listFiles: async () => [],
      loadFile: async () => null,
      saveFile: async () => {},
      removeFile: async () => {},
    },
  })
  await store.getState().refreshSongs()
  store.getState().openRide({ ...smallRide(), sections: [section] })
  page = rendered(store, <SectionPanel sectionId={section.id} />)
  const give = () => {
    const input = page.host.querySelector<HTMLInputElement>('.panel-hear input[type="file"]')!
    Object.defineProperty(input, 'files', { value: [new File(['x'], 'lamp.mp3', { type: 'audio/mpeg' })], configurable: true })
    act(() => void input.dispatchEvent(new Event('change', { bubbles: true })))
  }
  return { store, asked, give, song: () => store.getState().ride!.sections[0]!.song }
}

const hill = aBlock('h', { terrain: 'hill', length: { seconds: 60 } })

describe('a file given to a section', () => {
  it('is read in the tempi its terrain wants, and at the half or double the song has where that is known', async () => {
    const bare = await open(aSection('s', { blocks: [hill] }))
    bare.give()
    expect(bare.asked[0]!.hints).toEqual({ window: { from: 120, to: 156 } })
    page.close()
    const sung = await open(aSection('s', { song: aSong('x', { grid: gridOfTempo(100) }), blocks: [aBlock('b')] }))
    sung.give()
    expect(sung.asked[0]!.hints.window!.from).toBeCloseTo(100 / Math.SQRT2, 9)
    page.close()
    const open_ = await open(aSection('s', { song: aSong('x', { grid: undefined }) }))
    open_.give()
    expect(open_.asked[0]!.hints).toEqual({})
  })

  it('becomes its song, with half and double beside it', async () => {
    const { give, asked, song, store } = await open(aSection('s', { song: aSong('x'), blocks: [aBlock('b')] }))
    give()
    act(() => asked[0]!.say(heardAs('print', 128)))
    expect(tempoOf(song()!.grid!)).toBeCloseTo(128, 6)
    const row = page.host.querySelector('[data-hearing="heard"]')!
    const half = [...row.querySelectorAll('button')].find((button) => button.textContent === 'half: 64 bpm')!
    page.press(half)
    expect(tempoOf(song()!.grid!)).toBeCloseTo(64, 6)
    expect(store.getState().past).toHaveLength(2)
  })

  it('is linked without being heard where it is the section’s own or the shelf knows it, and heard anew when asked', async () => {
    const kept: ShelfSong = { id: 'k', song: aSong('k', { title: 'Lamp', fingerprint: 'print', grid: gridOfTempo(127) }) }
    const { give, asked, song, store } = await open(aSection('s', { song: aSong('x', { title: 'Mine' }), blocks: [aBlock('b')] }), [kept])
    give()
    await act(async () => {
      expect(await asked[0]!.known!('other')).toBe(false)
      expect(await asked[0]!.known!('print')).toBe(true)
    })
    act(() => asked[0]!.say({ kind: 'known', fingerprint: 'print' }))
    expect(song()).toMatchObject({ id: 'x', title: 'Mine', fingerprint: 'print', grid: kept.song.grid })
    give()
    act(() => asked[1]!.say({ kind: 'known', fingerprint: 'print' }))
    expect(store.getState().past).toHaveLength(1)
    page.press(page.find('button', 'detect again'))
    expect(asked[2]!.known).toBeUndefined()
  })
})

function Drives() {
  return [...useDrives(useApp((state) => state.ride))].map(
    ([id, { energy, loudness }]) => `${id}: ${energy ? `energy ${energy}` : `${loudness!.length} seconds`}; `,
  )
}

describe('what is known of the songs of a ride', () => {
  it('is the energy the shelf has or its sound suggests, and the loudness of files that were heard', async () => {
    const songs: ShelfSong[] = [
      { id: 'a', song: aSong('a', { title: 'By ear', fingerprint: 'pa' }), energy: 2 },
      { id: 'b', song: aSong('b', { title: 'By sound', fingerprint: 'pb', grid: gridOfTempo(150) }) },
    ]
    const { store } = await open(aSection('s'), songs)
    const titles = ['By ear', 'By sound', 'Unknown', 'Linked']
    const sections = titles.map((title, i) => aSection(`${i}`, { song: aSong(`r${i}`, { title, ...(i === 3 && { fingerprint: 'pl' }) }) }))
    page.close()
    store.getState().openRide({ ...smallRide(), sections })
    page = rendered(store, <Drives />)
    await page.settle()
    expect(page.text()).toBe('r0: energy 2; r1: energy 5; r3: 200 seconds; ')
  })
})
