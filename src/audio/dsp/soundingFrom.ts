/** Quieter than this share of the loudest hundredth of a second is silence. */
const QUIET = 0.02

/** Second at which a song starts to sound; 0 for silence throughout. */
export function soundingFrom(samples: Float32Array, sampleRate: number): number {
  const block = Math.max(1, Math.round(sampleRate / 100))
  let loudest = 0
  for (const sample of samples) if (Math.abs(sample) > loudest) loudest = Math.abs(sample)
  const limit = loudest * QUIET
  for (let i = 0; i < samples.length; i++) if (Math.abs(samples[i]!) > limit) return (Math.floor(i / block) * block) / sampleRate
  return 0
}
