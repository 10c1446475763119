import { type Band, makeBands } from './bands.ts'
import { downsampleInSteps } from './downsample.ts'
import { scaled } from './scaled.ts'
import { framesOf, spectraInSteps } from './spectra.ts'

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
  /** How loud each band is, compressed: `bands` values for each frame. */
  levels: Float32Array
  bands: number
}

/** The rate listened at, about; Hz. */
const RATE = 22_050
/** Ten milliseconds each, finer by interpolation; 46 ms are heard at a time. */
const FRAMING = { size: 1024, perSecond: 100 }
/** Compression of magnitudes relative to the song's mean: log(1 + g·x) (Klapuri 2006); the gain is our own. */
const GAIN = 8
/** Share of the work that thinning the samples out takes. */
const THINNING = 0.1
/** Rise is measured over this many frames. */
const BACK = 2

/**
 * Spectral flux: the summed rise of log-compressed magnitudes in bands of a third of an octave, in frames of 46 ms
 * under a Hann window (Dixon S, Onset detection revisited, DAFx 2006, 133-137; log compression after Klapuri AP, Eronen AJ,
 * Astola JT, IEEE Trans Audio Speech Lang Process 2006;14(1):342-355). Yields the share done, 0 to 1.
 */
export function* onsetsInSteps(samples: Float32Array, sampleRate: number): Generator<number, Onsets> {
  const sound = yield* scaled(downsampleInSteps({ samples, rate: sampleRate }, Math.max(1, Math.round(sampleRate / RATE))), 0, THINNING)
  const { rate, count } = framesOf(sound, FRAMING)
  const bands = makeBands(sound.rate / FRAMING.size, FRAMING.size / 2)
  const levels = new Float32Array(count * bands.length)
  let total = 0
  const spectra = spectraInSteps(sound, FRAMING, bands.at(-1)!.to, (frame, power) => {
    for (let b = 0, place = frame * bands.length; b < bands.length; b++, place++) {
      const { from, to } = bands[b]!
      let sum = 0
      for (let k = from; k < to; k++) sum += power[k]!
      total += levels[place] = Math.sqrt(sum)
    }
  })
  yield* scaled(spectra, THINNING, 1 - THINNING)
  const mean = total / Math.max(1, levels.length) || 1
  for (let i = 0; i < levels.length; i++) levels[i] = Math.log1p((GAIN * levels[i]!) / mean)
  return { rate, ...rises(levels, bands, count), levels, bands: bands.length }
}

/** How much the levels rise from frame to frame, as a mean over the bands of each part. */
function rises(levels: Float32Array, bands: readonly Band[], count: number): Pick<Onsets, 'low' | 'mid' | 'high' | 'all'> {
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
  return { ...parts, all }
}
