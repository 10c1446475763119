import { expect, it } from 'vitest'
import type { Hearing } from '#plan/songs/heardSong.ts'
import type { SongSound } from '#plan/sound/songSound.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { HearSong, SoundShelf } from '#store/ports.ts'

const sound: SongSound = { id: 'print', lengthSeconds: 2, peaks: new Uint8Array([7]), loudness: new Float32Array([-12]) }
const heard: Hearing = { kind: 'heard', song: { title: 'Lamp', lengthSeconds: 2, fingerprint: 'print', sound, beats: null } }

function aShelf() {
  const looks = new Map<string, SongSound>()
  const files = new Map<string, Blob>()
  const loads: string[] = []
  const shelf: SoundShelf = {
    load: async (id) => {
      loads.push(id)
      return looks.get(id) ?? null
    },
    save: async (one) => void looks.set(one.id, one),
    listFiles: async () => [...files.keys()],
    loadFile: async (id) => files.get(id) ?? null,
    saveFile: async (id, file) => void files.set(id, file),
    removeFile: async (id) => void files.delete(id),
  }
  return { shelf, looks, files, loads }
}

const hearSong: HearSong = (_file, _hints, onChange) => {
  onChange({ kind: 'decoding' })
  onChange(heard)
  return { abort: () => {} }
}

it('a file that was heard is remembered: its look for good, the file itself for this window', async () => {
  const { shelf, looks, files } = aShelf()
  const store = createAppStore({ newId: () => 'id', shelf: null, sounds: shelf, hearSong })
  const said: string[] = []
  const file = new File(['music'], 'lamp.mp3')
  store.getState().hearSong!(file, {}, ({ kind }) => said.push(kind))
  expect(said).toEqual(['decoding', 'heard'])
  expect(store.getState().sounds.get('print')).toBe(sound)
  expect(await store.getState().soundFile('print')).toBe(file)
  expect(looks.get('print')).toBe(sound)
  expect(files.size).toBe(0)
})

it('keeps a file only when asked, and lets it go again', async () => {
  const { shelf, files } = aShelf()
  const store = createAppStore({ newId: () => 'id', shelf: null, sounds: shelf, hearSong })
  expect(await store.getState().keepSoundFile('print')).toBe(false)
  store.getState().hearSong!(new File(['music'], 'lamp.mp3'), {}, () => {})
  expect(await store.getState().keepSoundFile('print')).toBe(true)
  expect([...store.getState().keptSoundFiles]).toEqual(['print'])

  const later = createAppStore({ newId: () => 'id', shelf: null, sounds: shelf })
  await later.getState().refreshSoundFiles()
  expect([...later.getState().keptSoundFiles]).toEqual(['print'])
  expect(await later.getState().soundFile('print')).toBe(files.get('print'))
  await later.getState().dropSoundFile('print')
  expect(later.getState().keptSoundFiles.size).toBe(0)
  expect(await later.getState().soundFile('print')).toBeNull()
})

it('says so when a file cannot be kept', async () => {
  const { shelf } = aShelf()
  shelf.saveFile = async () => {
    throw new Error('the disk is full')
  }
  const store = createAppStore({ newId: () => 'id', shelf: null, sounds: shelf, hearSong })
  store.getState().hearSong!(new File(['music'], 'lamp.mp3'), {}, () => {})
  expect(await store.getState().keepSoundFile('print')).toBe(false)
  expect(store.getState().keptSoundFiles.size).toBe(0)
  expect(store.getState().notice).toMatchObject({ kind: 'problem', details: ['the disk is full'] })
})

it('brings kept looks in once, and asks for none twice', async () => {
  const { shelf, looks, loads } = aShelf()
  looks.set('print', sound)
  const store = createAppStore({ newId: () => 'id', shelf: null, sounds: shelf })
  await Promise.all([store.getState().wantSounds(['print', 'gone']), store.getState().wantSounds(['print'])])
  await store.getState().wantSounds(['print', 'gone'])
  expect(loads).toEqual(['print', 'gone'])
  expect([...store.getState().sounds.keys()]).toEqual(['print'])
})
