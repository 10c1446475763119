/** The value of a peak at full scale. */
const FULL = 255

/**
 * The outline of a sound, for drawing: the largest amplitude in each of its bins, 0 for silence to 255 for full scale
 * and beyond. Bin `i` starts at `i / perSecond` seconds; the last may be shorter.
 *
 * @param samples mono, about −1 to 1; what is no number counts as silence
 * @param sampleRate Hz
 * @param perSecond bins a second, at most `sampleRate`
 */
export function peaksOf(samples: Float32Array, sampleRate: number, perSecond = 50): Uint8Array {
  const width = sampleRate / perSecond
  const peaks = new Uint8Array(Math.ceil(samples.length / width))
  for (let bin = 0; bin < peaks.length; bin++) {
    const end = Math.min(samples.length, Math.ceil((bin + 1) * width))
    let peak = 0
    for (let i = Math.ceil(bin * width); i < end; i++) {
      const size = Math.abs(samples[i]!)
      if (size > peak) peak = size
    }
    peaks[bin] = Math.round(Math.min(1, peak) * FULL)
  }
  return peaks
}
