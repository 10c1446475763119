import { sayHearings } from '#engine/alignment/sayHearings.ts'
import { heardOnShelf } from '#plan/songs/heardOnShelf.ts'
import { type HeardSong, type Hearing, isUnderWay } from '#plan/songs/heardSong.ts'
import { isMusicFile } from '#plan/songs/musicFile.ts'
import { onShelf } from '#plan/songs/shelfSong.ts'
import { tell } from '#words/words.ts'
import type { HearingOf } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** A file that was given for the shelf, and where its hearing stands. */
export interface ShelfHearing {
  key: number
  name: string
  hearing: Hearing
  /** The song it became, once that is kept. */
  songId?: string
}

/** Files of music on their way to the shelf. They go on wherever in the page one is. */
export interface HearingSlice {
  /** In the order they were given, until they are cleared away. */
  hearings: readonly ShelfHearing[]
  /** Files given with them that are no music. */
  filesLeftOut: number

  /** Hears the files of music among these one after another and keeps each as a song at once; a file that is known is linked again. */
  hearForShelf: (files: readonly File[]) => void
  /** Hears the file of a kept song anew, and takes what it gives in place of the beats that are there. False where the file is not at hand. */
  hearAnew: (songId: string) => Promise<boolean>
  stopHearing: (key: number) => void
  stopHearings: () => void
  /** Takes those off the list that are over. */
  clearHearings: () => void
}

export function createHearingSlice(set: SetState, get: GetState): HearingSlice {
  const running = new Map<number, HearingOf>()
  let lastKey = 0
  // One song is kept after another: each is matched with all that is there when its turn comes.
  let keeping: Promise<unknown> = Promise.resolve()

  const change = (key: number, patch: Partial<ShelfHearing>) =>
    set(({ hearings }) => ({ hearings: hearings.map((one) => (one.key === key ? { ...one, ...patch } : one)) }))

  /** Says how it went once nothing is left to hear. */
  function sayIfOver(): void {
    const { hearings, announce } = get()
    if (hearings.length > 0 && !hearings.some(({ hearing }) => isUnderWay(hearing))) {
      announce(tell(sayHearings(hearings.map(({ hearing }) => hearing))))
    }
  }

  async function keepHeard(key: number, heard: HeardSong, anew: boolean): Promise<void> {
    const { songs, newId, keepSongs } = get()
    const kept = heardOnShelf(heard, songs, newId, anew)
    if (await keepSongs([kept], true)) change(key, { songId: kept.id })
  }

  /** A song that is known by the open ride alone comes to the shelf from there. */
  async function keepKnown(key: number, fingerprint: string): Promise<void> {
    const { songs, newId, keepSongs } = get()
    const there = songs.find(({ song }) => song.fingerprint === fingerprint)
    const song = rideSong(fingerprint)
    const kept = there ?? (song && onShelf(song, songs, newId))
    if (kept && (there || (await keepSongs([kept], true)))) change(key, { songId: kept.id })
  }

  const rideSong = (fingerprint: string) => get().ride?.sections.find(({ song }) => song?.fingerprint === fingerprint)?.song

  /** Known is a song whose beats are on the shelf or in the open ride, and what it looks like on this machine. */
  async function isKnown(fingerprint: string): Promise<boolean> {
    // The file before this one may be the same.
    await keeping
    const song = get().songs.find((kept) => kept.song.fingerprint === fingerprint)?.song ?? rideSong(fingerprint)
    if (!song?.grid) return false
    await get().wantSounds([fingerprint])
    return get().sounds.has(fingerprint)
  }

  function start(file: File, anew: boolean): void {
    const { hearSong } = get()
    if (!hearSong) return
    const key = ++lastKey
    set(({ hearings }) => ({ hearings: [...hearings, { key, name: file.name, hearing: { kind: 'waiting' } }] }))
    const onChange = (hearing: Hearing) => {
      change(key, { hearing })
      if (isUnderWay(hearing)) return
      running.delete(key)
      if (hearing.kind === 'heard') keeping = keeping.then(() => keepHeard(key, hearing.song, anew))
      if (hearing.kind === 'known') keeping = keeping.then(() => keepKnown(key, hearing.fingerprint))
      keeping = keeping.then(sayIfOver)
    }
    running.set(key, hearSong(file, {}, onChange, anew ? {} : { isKnown }))
  }

  return {
    hearings: [],
    filesLeftOut: 0,
    hearForShelf: (files) => {
      const music = files.filter(isMusicFile)
      set(({ filesLeftOut }) => ({ filesLeftOut: filesLeftOut + files.length - music.length }))
      for (const file of music) start(file, false)
    },
    hearAnew: async (songId) => {
      const song = get().songs.find(({ id }) => id === songId)?.song
      const blob = song?.fingerprint === undefined ? null : await get().soundFile(song.fingerprint)
      if (!song || !blob || !get().hearSong) return false
      start(blob instanceof File ? blob : new File([blob], song.title), true)
      return true
    },
    stopHearing: (key) => running.get(key)?.abort(),
    stopHearings: () => {
      for (const one of [...running.values()]) one.abort()
    },
    clearHearings: () => set(({ hearings }) => ({ hearings: hearings.filter(({ hearing }) => isUnderWay(hearing)), filesLeftOut: 0 })),
  }
}
