import { makeBands } from './bands.ts'
import { downsample } from './downsample.ts'
import { makeFft } from './fft.ts'
import { padded } from './padded.ts'

/** How strongly something starts to sound, frame by frame; frame i is at i / rate seconds. */
export interface Onsets {
  /** Frames a second. */
  rate: number
  /** Kick and bass. */
  low: Float32Array
  /** Voice, chords, snare. */
  mid: Float32Array
  /** Cymbals and consonants. */
  high: Float32Array
  /** All three, for finding beats. */
  all: Float32Array
}

/** Frames a second: ten milliseconds each, finer by interpolation. */
const FRAMES = 100
/** The rate listened at, about; Hz. */
const RATE = 22_050
const SIZE = 1024
/** Compression of magnitudes relative to the song's mean: log(1 + g·x) (Klapuri 2006, from memory). */
const GAIN = 8
/** Rise is measured over this many frames. */
const BACK = 2
/** Frames between two words on how far it is. */
const STEP = 2000

/**
 * Spectral flux: the summed rise of log-compressed magnitudes in bands of a third of an octave, in frames of 46 ms
 * under a Hann window (Dixon 2006; log compression after Klapuri, Eronen and Astola 2006; from memory). Two frames
 * go through one transform. Yields the share done, 0 to 1.
 */
export function* onsetsInSteps(samples: Float32Array, sampleRate: number): Generator<number, Onsets> {
  const sound = downsample({ samples, rate: sampleRate }, Math.max(1, Math.round(sampleRate / RATE)))
  const hop = Math.max(1, Math.round(sound.rate / FRAMES))
  const rate = sound.rate / hop
  const count = Math.floor(sound.samples.length / hop) + 1
  const bands = makeBands(sound.rate / SIZE, SIZE / 2)
  const levels = new Float32Array(count * bands.length)

  const fft = makeFft(SIZE)
  const window = Float64Array.from({ length: SIZE }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / SIZE))
  const re = new Float64Array(SIZE)
  const im = new Float64Array(SIZE)
  const wide = padded(sound.samples, SIZE / 2, 2 * SIZE)
  let total = 0
  for (let frame = 0; frame < count; frame += 2) {
    const start = frame * hop
    for (let i = 0; i < SIZE; i++) {
      re[i] = window[i]! * wide[start + i]!
      im[i] = window[i]! * wide[start + hop + i]!
    }
    fft(re, im)
    for (let b = 0; b < bands.length; b++) {
      const { from, to } = bands[b]!
      let first = 0
      let second = 0
      for (let k = from; k < to; k++) {
        const r = re[k]!
        const m = im[k]!
        const r2 = re[SIZE - k]!
        const m2 = im[SIZE - k]!
        first += (r + r2) ** 2 + (m - m2) ** 2
        second += (m + m2) ** 2 + (r - r2) ** 2
      }
      levels[frame * bands.length + b] = Math.sqrt(first)
      total += Math.sqrt(first)
      if (frame + 1 < count) levels[(frame + 1) * bands.length + b] = Math.sqrt(second)
    }
    if (frame % STEP === 0) yield frame / count
  }

  const mean = (2 * total) / Math.max(1, levels.length) || 1
  for (let i = 0; i < levels.length; i++) levels[i] = Math.log1p((GAIN * levels[i]!) / mean)
  const parts = { low: new Float32Array(count), mid: new Float32Array(count), high: new Float32Array(count) }
  const sizes = { low: 0, mid: 0, high: 0 }
  for (const { part } of bands) sizes[part]++
  for (let b = 0; b < bands.length; b++) {
    const part = parts[bands[b]!.part]
    const weight = 1 / sizes[bands[b]!.part]
    for (let frame = BACK; frame < count; frame++) {
      const rise = levels[frame * bands.length + b]! - levels[(frame - BACK) * bands.length + b]!
      if (rise > 0) part[frame]! += weight * rise
    }
  }
  const all = new Float32Array(count)
  for (let frame = 0; frame < count; frame++) all[frame] = parts.low[frame]! + parts.mid[frame]! + parts.high[frame]!
  return { rate, ...parts, all }
}
