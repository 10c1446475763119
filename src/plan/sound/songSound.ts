import type { Seconds } from '#units/units.ts'

/** Waveform peaks in a second of sound. */
export const PEAKS_PER_SECOND = 50

/** What is remembered of a song's sound: enough to draw and to weigh it, too little to be heard. */
export interface SongSound {
  /** The song's fingerprint. */
  id: string
  lengthSeconds: Seconds
  /** The largest amplitude of each fiftieth of a second, 0 to 255. */
  peaks: Uint8Array
  /** Loudness of each second, in LUFS; −70 where there is silence. */
  loudness: Float32Array
}

/** Whether a value that comes out of a store is such a sound. */
export function isSongSound(value: unknown): value is SongSound {
  if (typeof value !== 'object' || value === null) return false
  const { id, lengthSeconds, peaks, loudness } = value as Record<string, unknown>
  return (
    typeof id === 'string' &&
    typeof lengthSeconds === 'number' &&
    lengthSeconds > 0 &&
    peaks instanceof Uint8Array &&
    loudness instanceof Float32Array
  )
}
