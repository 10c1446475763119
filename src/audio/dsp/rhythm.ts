import { makeFft } from './fft.ts'

/** How a curve of onsets repeats over the whole song. */
export interface Rhythm {
  /** Frames a second. */
  rate: number
  /** Likeness of the curve to itself by lag in frames, 1 at lag 0. */
  likeness: Float64Array
  /** Magnitude by frequency, relative to its mean; `perHertz` bins to one hertz. */
  spectrum: Float64Array
  perHertz: number
}

/** Longest lag and highest frequency kept: two slow bars, sixteenths of a fast song. */
const LONGEST = 8
const FASTEST = 20

/**
 * Autocorrelation and spectrum of a whole song's onsets (a tempogram of one window). The spectrum tells
 * periods apart as finely as the song is long; the autocorrelation tells a period from its parts (Peeters G,
 * EURASIP J Adv Signal Process 2007, article 67215).
 */
export function rhythmOf(curve: Float32Array, rate: number): Rhythm {
  const size = 2 ** Math.ceil(Math.log2(Math.max(2, 2 * curve.length)))
  const fft = makeFft(size)
  const re = new Float64Array(size)
  const im = new Float64Array(size)
  let mean = 0
  for (const value of curve) mean += value / curve.length
  for (let i = 0; i < curve.length; i++) re[i] = curve[i]! - mean
  fft(re, im)

  const bins = Math.min(size / 2, Math.ceil((FASTEST * size) / rate))
  const spectrum = new Float64Array(bins)
  let sum = 0
  for (let k = 0; k < bins; k++) sum += spectrum[k] = Math.hypot(re[k]!, im[k]!)
  for (let k = 0; k < bins; k++) spectrum[k]! *= bins / (sum || 1)

  for (let k = 0; k < size; k++) {
    re[k] = re[k]! ** 2 + im[k]! ** 2
    im[k] = 0
  }
  fft(re, im)
  const lags = Math.min(curve.length, Math.ceil(LONGEST * rate))
  const first = re[0]! || 1
  const likeness = new Float64Array(lags)
  for (let lag = 0; lag < lags; lag++) likeness[lag] = ((re[lag]! / first) * curve.length) / (curve.length - lag)
  return { rate, likeness, spectrum, perHertz: size / rate }
}
