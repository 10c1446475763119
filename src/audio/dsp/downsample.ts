/** Samples and how many there are a second. */
export interface Sound {
  samples: Float32Array
  rate: number
}

/** New samples between two words on how far it is: some milliseconds of work. */
const STEP = 2 ** 18

/**
 * Sound at the n-th part of its rate: each new sample is the mean of 2n old ones under a triangle, which takes enough
 * off above half the new rate for onsets and chords to be heard. The sound itself where n is 1. Yields the share done,
 * 0 to 1.
 */
export function* downsampleInSteps({ samples, rate }: Sound, n: number): Generator<number, Sound> {
  if (n <= 1) return { samples, rate }
  const weights = Float64Array.from({ length: 2 * n - 1 }, (_, i) => (n - Math.abs(i - n + 1)) / (n * n))
  const length = Math.floor(samples.length / n)
  const out = new Float32Array(length)
  for (let i = 0; i < length; i++) {
    let sum = 0
    const from = i * n - n + 1
    for (let k = Math.max(0, -from); k < weights.length && from + k < samples.length; k++) sum += weights[k]! * samples[from + k]!
    out[i] = sum
    if ((i + 1) % Math.ceil(STEP / n) === 0) yield i / length
  }
  return { samples: out, rate: rate / n }
}
