import type { ClickKind } from '#plan/sound/score.ts'
import type { Seconds } from '#units/units.ts'

/** How the clicks are told apart, in hertz: the first of an eight highest, a second without music low and soft. */
const PITCHES: Record<ClickKind, { hertz: number; level: number }> = {
  eight: { hertz: 2093, level: 1 },
  bar: { hertz: 1568, level: 0.85 },
  beat: { hertz: 1047, level: 0.7 },
  second: { hertz: 392, level: 0.5 },
}

const LENGTH: Seconds = 0.045
/** Fades to a thousandth within the length. */
const DECAY = 6.9 / LENGTH

/** A click as samples from −1 to 1: a tone that is loudest within its first quarter of a millisecond and dies away at once. */
export function clickSamples(kind: ClickKind, sampleRate: number): Float32Array<ArrayBuffer> {
  const { hertz, level } = PITCHES[kind]
  const samples = new Float32Array(Math.round(LENGTH * sampleRate))
  for (let i = 0; i < samples.length; i++) {
    const t = i / sampleRate
    // A cosine begins at its peak, so that the ear and a meter both place it on the beat.
    samples[i] = level * Math.exp(-DECAY * t) * Math.cos(2 * Math.PI * hertz * t)
  }
  return samples
}
