import { describe, expect, it } from 'vitest'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import type { Hearing } from '#plan/songs/heardSong.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { HearSong } from '#store/ports.ts'
import { heardFile } from '#tests/support/heardFile.ts'
import { aSection, aSong, countedIds, smallRide } from '#tests/support/smallRide.ts'

/** Hears each file when told to; a file's fingerprint is its text. */
function anEar() {
  const told = new Map<string, { say: (hearing: Hearing) => void; known: () => Promise<boolean | undefined>; aborted: boolean }>()
  const hearSong: HearSong = (file, _hints, onChange, options) => {
    const one = { say: onChange, known: async () => options?.isKnown?.(`print of ${file.name}`), aborted: false }
    told.set(file.name, one)
    return {
      abort: () => {
        one.aborted = true
        onChange({ kind: 'aborted' })
      },
    }
  }
  return { hearSong, told }
}

const heardAs = (name: string, title = name) => heardFile(title, `print of ${name}`)

function aStore(songs: ShelfSong[] = []) {
  const kept = new Map(songs.map((song) => [song.id, song]))
  const shelf = {
    list: async () => [...kept.values()],
    save: async (song: ShelfSong) => void kept.set(song.id, song),
    remove: async (id: string) => void kept.delete(id),
  }
  const ear = anEar()
  const store = createAppStore({ newId: countedIds('new'), shelf: null, songs: shelf, hearSong: ear.hearSong })
  const titles = () => [...kept.values()].map(({ song }) => song.title)
  return { store, state: store.getState, kept, titles, ...ear }
}

const files = (...names: string[]) => names.map((name) => new File([name], name, { type: 'audio/mpeg' }))
const settled = () => new Promise((done) => setTimeout(done, 5))
const kinds = (state: ReturnType<typeof aStore>['state']) => state().hearings.map(({ hearing }) => hearing.kind)

describe('files for the shelf', () => {
  it('become songs one by one while the rest go on, and a failed one harms none', async () => {
    const { state, told, titles } = aStore()
    state().hearForShelf(files('a', 'b', 'c'))
    told.get('a')!.say({ kind: 'analysing', share: 0.5 })
    expect(state().hearings[0]).toEqual({ key: 1, name: 'a', hearing: { kind: 'analysing', share: 0.5 } })
    told.get('a')!.say(heardAs('a'))
    await settled()
    expect(titles()).toEqual(['a'])
    expect(state().songs.map(({ song }) => song.title)).toEqual(['a'])
    expect(state().announcement).toBe('')
    told.get('b')!.say({ kind: 'failed', sentence: 'torn' })
    told.get('c')!.say(heardAs('c'))
    await settled()
    expect(titles()).toEqual(['a', 'c'])
    expect(kinds(state)).toEqual(['heard', 'failed', 'heard'])
    expect(state().hearings.map(({ songId }) => songId)).toEqual(['new1', undefined, 'new2'])
    expect(state().announcement).toBe('2 files read, 1 can’t be read.')
    state().clearHearings()
    expect(state().hearings).toEqual([])
  })

  it('are those of music; the others are left out and counted', () => {
    const { state, told } = aStore()
    state().hearForShelf([...files('a'), new File(['x'], 'cover.jpg', { type: 'image/jpeg' }), new File(['x'], 'notes.txt')])
    expect([...told.keys()]).toEqual(['a'])
    expect(state().filesLeftOut).toBe(2)
    state().clearHearings()
    expect(state().filesLeftOut).toBe(0)
  })

  it('are matched one after another, so that two of a name make one song', async () => {
    const { state, told, titles } = aStore()
    state().hearForShelf(files('a', 'b'))
    told.get('a')!.say(heardAs('a', 'Lamp'))
    told.get('b')!.say(heardAs('b', 'Lamp'))
    await settled()
    expect(titles()).toEqual(['Lamp'])
  })

  it('can be stopped one by one and all together, and what is over can be cleared away', async () => {
    const { state, told } = aStore()
    state().hearForShelf(files('a', 'b', 'c'))
    state().stopHearing(2)
    expect([...told.values()].map(({ aborted }) => aborted)).toEqual([false, true, false])
    state().clearHearings()
    expect(state().hearings.map(({ name }) => name)).toEqual(['a', 'c'])
    state().stopHearings()
    await settled()
    expect(kinds(state)).toEqual(['aborted', 'aborted'])
    expect(state().announcement).toBe('0 files read, 2 stopped.')
  })

  it('are known where the shelf has their beats and this machine their look, and are linked then', async () => {
    const { state, told } = aStore([{ id: 's', song: aSong('s', { fingerprint: 'print of a' }) }])
    await state().refreshSongs()
    state().hearForShelf(files('a'))
    expect(await told.get('a')!.known()).toBe(false)
    told.get('a')!.say(heardAs('a'))
    await settled()
    state().hearForShelf(files('a'))
    expect(await told.get('a')!.known()).toBe(true)
    told.get('a')!.say({ kind: 'known', fingerprint: 'print of a' })
    await settled()
    expect(state().hearings.map(({ songId }) => songId)).toEqual(['s', 's'])
  })

  it('come to the shelf from the open ride where that knows them', async () => {
    const { state, told, kept } = aStore()
    const song = aSong('r', { title: 'Ridden', fingerprint: 'print of a', grid: gridOfTempo(131) })
    state().openRide({ ...smallRide(), sections: [aSection('s', { song })] })
    state().hearForShelf(files('a'))
    told.get('a')!.say({ kind: 'known', fingerprint: 'print of a' })
    await settled()
    expect([...kept.values()].map((one) => one.song)).toEqual([{ ...song, id: 'new1' }])
  })
})

describe('a kept song', () => {
  it('is heard anew when asked, from the file at hand', async () => {
    const { state, told, kept } = aStore([{ id: 's', song: aSong('s', { fingerprint: 'print of a' }) }])
    await state().refreshSongs()
    expect(await state().hearAnew('s')).toBe(false)
    state().haveSoundFile('print of a', files('a')[0]!)
    expect(await state().hearAnew('s')).toBe(true)
    expect(await told.get('a')!.known()).toBeUndefined()
    told.get('a')!.say(heardAs('a'))
    await settled()
    expect(kept.get('s')!.song.grid).toEqual(gridOfTempo(128))
  })
})

describe('a song taken from the shelf', () => {
  it('goes with its kept file, and both come back', async () => {
    const files = new Map<string, Blob>([['print', new Blob(['music'])]])
    const kept = new Map<string, ShelfSong>([['s', { id: 's', song: aSong('s', { fingerprint: 'print' }) }]])
    const store = createAppStore({
      newId: countedIds(),
      shelf: null,
      songs: {
        list: async () => [...kept.values()],
        save: async (song) => void kept.set(song.id, song),
        remove: async (id) => void kept.delete(id),
      },
      sounds: {
        load: async () => null,
        save: async () => {},
        listFiles: async () => [...files.keys()],
        loadFile: async (id) => files.get(id) ?? null,
        saveFile: async (id, file) => void files.set(id, file),
        removeFile: async (id) => void files.delete(id),
      },
    })
    await store.getState().refreshSongs()
    await store.getState().refreshSoundFiles()
    await store.getState().removeSong('s')
    expect([kept.size, files.size]).toEqual([0, 0])
    expect(store.getState().announcement).toBe('Removed “s” from my songs, and its file from this device')
    await store.getState().restoreSong()
    expect([kept.size, files.size, store.getState().removedSong]).toEqual([1, 1, null])
    expect(store.getState().keptSoundFiles.has('print')).toBe(true)
  })
})
