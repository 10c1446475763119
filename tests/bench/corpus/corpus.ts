import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { readWav } from '#tests/bench/corpus/readWav.ts'

/** A song whose beats are known, as the corpus's `truth.json` lists it; seconds. */
export interface KnownSong {
  id: string
  /** Relative to the corpus. */
  file: string
  bpm: number
  meter: string
  beats: number[]
  /** Null where they are not known. */
  downbeats: number[] | null
}

export interface LoadedSong extends KnownSong {
  samples: Float32Array
  sampleRate: number
}

export function knownSongs(folder: string): KnownSong[] {
  return JSON.parse(readFileSync(join(folder, 'truth.json'), 'utf8'))
}

/**
 * A song with its samples. Cut, it has lost three to seventeen seconds of its beginning, the same at every run: uncut,
 * its first beat is nearly always a one, and every fourth from there is a guess that scores well.
 */
export function loadSong(folder: string, song: KnownSong, cut: boolean): LoadedSong {
  const { samples, sampleRate } = readWav(join(folder, song.file))
  const from = cut ? 3 + 14 * shareOf(song.id) : 0
  const later = (seconds: readonly number[]) => seconds.map((second) => second - from).filter((second) => second >= 0)
  return {
    ...song,
    beats: later(song.beats),
    downbeats: song.downbeats && later(song.downbeats),
    samples: samples.slice(Math.round(from * sampleRate)),
    sampleRate,
  }
}

/** A name as a share, 0 to 1, evenly spread (FNV-1a). */
function shareOf(name: string): number {
  let hash = 2_166_136_261
  for (const letter of name) hash = Math.imul(hash ^ letter.charCodeAt(0), 16_777_619)
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d)
  return ((hash ^ (hash >>> 12)) >>> 0) / 2 ** 32
}
