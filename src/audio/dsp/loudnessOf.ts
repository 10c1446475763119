import { kWeighting } from './kWeighting.ts'

/** What silence and anything quieter is said to be, LUFS: the absolute gate of ITU-R BS.1770-5. */
const QUIETEST = -70
/** Makes up for the weighting's gain at 997 Hz; dB, ITU-R BS.1770-5, annex 1, equation 2. */
const OFFSET = -0.691

/**
 * Loudness of each second of a sound, LUFS: mean square of the K-weighted samples (ITU-R BS.1770-5, annex 1) without
 * gates or overlap, −70 at least. The last second may be shorter. Of a mixture of channels in equal parts it reads up
 * to 3 LU under the standard's sum over channels, so compare seconds of one song, not songs with a norm.
 *
 * @param samples mono, about −1 to 1; what is no number counts as silence
 * @param sampleRate Hz, 8000 or more
 */
export function loudnessOf(samples: Float32Array, sampleRate: number): Float32Array {
  const [shelf, highPass] = kWeighting(sampleRate)
  const [b0, b1, b2] = shelf.b
  const [a1, a2] = shelf.a
  const [c1, c2] = highPass.a
  const loudness = new Float32Array(Math.ceil(samples.length / sampleRate))
  // Both filters in transposed direct form II; the high-pass has the numerator 1, −2, 1.
  let s1 = 0
  let s2 = 0
  let t1 = 0
  let t2 = 0
  for (let second = 0; second < loudness.length; second++) {
    const start = Math.ceil(second * sampleRate)
    const end = Math.min(samples.length, Math.ceil((second + 1) * sampleRate))
    let power = 0
    for (let i = start; i < end; i++) {
      const sample = samples[i]!
      const x = Number.isFinite(sample) ? sample : 0
      const y = b0 * x + s1
      s1 = b1 * x - a1 * y + s2
      s2 = b2 * x - a2 * y
      const z = y + t1
      t1 = -2 * y - c1 * z + t2
      t2 = y - c2 * z
      power += z * z
    }
    loudness[second] = Math.max(QUIETEST, OFFSET + 10 * Math.log10(power / (end - start)))
  }
  return loudness
}
