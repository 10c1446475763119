import { evened } from './evened.ts'
import type { Harmony } from './harmony.ts'
import type { Onsets } from './onsets.ts'
import { type Rhythm, rhythmOf } from './rhythm.ts'

/** All that is heard of a song before a beat is chosen. */
export interface Heard {
  onsets: Onsets
  harmony: Harmony
  /** `onsets.all`, evened: what beats are fitted to. */
  curve: Float32Array
  rhythm: Rhythm
  lowRhythm: Rhythm
  chordRhythm: Rhythm
}

/** Onsets and harmony with their repetitions. */
export function heardOf(onsets: Onsets, harmony: Harmony): Heard {
  const curve = evened(onsets.all, onsets.rate)
  return {
    onsets,
    harmony,
    curve,
    rhythm: rhythmOf(curve, onsets.rate),
    lowRhythm: rhythmOf(onsets.low, onsets.rate),
    chordRhythm: rhythmOf(harmony.change, harmony.rate),
  }
}
