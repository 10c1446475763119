/** Quieter than this share of the loudest sample is silence. */
const QUIET = 0.02
/** What is said is exact to this many parts of a second. */
const PARTS = 100

/** Second at which a song starts to sound; 0 for silence throughout. */
export function soundingFrom(samples: Float32Array, sampleRate: number): number {
  let loudest = 0
  for (let i = 0; i < samples.length; i++) {
    const size = Math.abs(samples[i]!)
    if (size > loudest) loudest = size
  }
  const limit = loudest * QUIET
  let first = 0
  while (first < samples.length && !(Math.abs(samples[first]!) > limit)) first++
  return first === samples.length ? 0 : Math.floor((first / sampleRate) * PARTS) / PARTS
}
