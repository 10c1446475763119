/** Quieter than this share of the loudest sample is silence. */
const QUIET = 0.02
/** Parts of a second that are told apart. */
const PARTS = 100
/** Samples between two words on how far it is. */
const STEP = 2 ** 19

/** Second at which a song starts to sound, to the hundredth; 0 for silence throughout. Yields the share done, 0 to 1. */
export function* openingInSteps(samples: Float32Array, sampleRate: number): Generator<number, number> {
  const width = sampleRate / PARTS
  const peaks = new Float32Array(Math.ceil(samples.length / width))
  for (let i = 0; i < samples.length; i++) {
    const size = Math.abs(samples[i]!)
    const part = Math.floor(i / width)
    if (size > peaks[part]!) peaks[part] = size
    if ((i + 1) % STEP === 0) yield i / samples.length
  }
  const limit = QUIET * peaks.reduce((loudest, peak) => Math.max(loudest, peak), 0)
  return (
    Math.max(
      0,
      peaks.findIndex((peak) => peak > limit),
    ) / PARTS
  )
}
