import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { readWav } from '#tests/bench/corpus/readWav.ts'

/** A song whose beats are known, as the corpus's `truth.json` lists it; seconds. */
export interface KnownSong {
  id: string
  /** `synth` is made by a program, all else by people. */
  kind: string
  /** Relative to the corpus. */
  file: string
  bpm: number
  meter: string
  beats: number[]
  /** Null where they are not known. */
  downbeats: number[] | null
  /** Beats that start eight, where they are known. */
  phrases8?: number[] | null
}

export interface LoadedSong extends KnownSong {
  samples: Float32Array
  sampleRate: number
}

export function knownSongs(folder: string): KnownSong[] {
  return JSON.parse(readFileSync(join(folder, 'truth.json'), 'utf8'))
}

export const loadSong = (folder: string, song: KnownSong): LoadedSong => ({ ...song, ...readWav(join(folder, song.file)) })

/**
 * Seconds to cut off a song's beginning, three to seventeen unless asked otherwise, the same at every run for the same
 * name: uncut, a first beat is nearly always a one, and every fourth from there is a guess that scores well.
 */
export const cutOf = (name: string, from = 3, to = 17): number => from + (to - from) * shareOf(name)

/** A song without its first seconds, played so many times as fast. */
export function cutSong(song: LoadedSong, from: number, speed = 1): LoadedSong {
  const later = (seconds: readonly number[]) => seconds.map((second) => (second - from) / speed).filter((second) => second >= 0)
  return {
    ...song,
    bpm: song.bpm * speed,
    beats: later(song.beats),
    downbeats: song.downbeats && later(song.downbeats),
    phrases8: song.phrases8 && later(song.phrases8),
    samples: song.samples.subarray(Math.round(from * song.sampleRate)),
    sampleRate: song.sampleRate * speed,
  }
}

/** A name as a share, 0 to 1, evenly spread (FNV-1a). */
function shareOf(name: string): number {
  let hash = 2_166_136_261
  for (const letter of name) hash = Math.imul(hash ^ letter.charCodeAt(0), 16_777_619)
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d)
  return ((hash ^ (hash >>> 12)) >>> 0) / 2 ** 32
}
