import type { KnownSong, LoadedSong } from '#tests/bench/corpus/corpus.ts'
import { fMeasure } from '#tests/bench/corpus/fMeasure.ts'

/** What one tool says of one song; what it does not say is null. */
export interface Said {
  bpm: number
  beats: number[] | null
  downbeats: number[] | null
  eights: number[] | null
  beatsPerBar: number | null
}

/** What says the beats of a song, and how long it took, seconds. */
export type Tool = (song: LoadedSong, cut: number) => Promise<{ said: Said | null; took: number }>

/** How right it is. Shares 0 to 1; null where nothing was said or nothing is known. */
export interface Judged {
  song: KnownSong
  bpm: number
  beatF: number
  downbeatF: number | null
  /** Where the ones are right. */
  eightF: number | null
  beatsPerBar: number | null
  /** Milliseconds the fitted tempo is off after four minutes, octave apart. */
  drift: number
}

const OCTAVES = [1, 2, 1 / 2, 3, 1 / 3]
/** Ones are right where they score more than this: half of them are not. */
const RIGHT = 0.75

export function judge(song: KnownSong, said: Said | null): Judged {
  const bpm = said?.bpm ?? 0
  const off = Math.min(...OCTAVES.map((octave) => Math.abs(bpm / (song.bpm * octave) - 1)))
  const downbeatF = said?.downbeats && song.downbeats ? fMeasure(said.downbeats, song.downbeats) : null
  const eightsKnown = said?.eights && song.phrases8 && downbeatF !== null && downbeatF > RIGHT
  return {
    song,
    bpm,
    beatF: fMeasure(said?.beats ?? [], song.beats),
    downbeatF,
    eightF: eightsKnown ? fMeasure(said.eights!, song.phrases8!) : null,
    beatsPerBar: said?.beatsPerBar ?? null,
    drift: off * 240_000,
  }
}

/** Whether the tempo is right to within a share of it. */
export const isNear = ({ bpm, song }: Judged, within: number): boolean => Math.abs(bpm / song.bpm - 1) <= within

/** Whether it is right, or the double, half, triple or third of what is, to within four in a hundred. */
export const isAnyOctave = ({ bpm, song }: Judged): boolean => OCTAVES.some((octave) => Math.abs(bpm / (song.bpm * octave) - 1) <= 0.04)
