import { expect, it } from 'vitest'
import { loudnessOf } from '#audio/dsp/loudnessOf.ts'

const RATE = 8000

it('loudness is one value a second, and the last second counts for what there is of it', () => {
  const samples = Float32Array.from({ length: 2.5 * RATE }, (_, i) => (i < RATE ? 0.1 : 0.4) * Math.sin(i))
  const [quiet, loud, last, ...none] = loudnessOf(samples, RATE)
  expect(none).toEqual([])
  expect(loud! - quiet!).toBeCloseTo(20 * Math.log10(4), 1)
  expect(last).toBeCloseTo(loud!, 1)
})

it('loudness does not lose its way after samples that are no numbers', () => {
  const samples = Float32Array.from({ length: 3 * RATE }, (_, i) => Math.sin(i))
  const whole = loudnessOf(samples, RATE)
  samples[100] = Number.NaN
  samples[200] = Number.POSITIVE_INFINITY
  const holed = loudnessOf(samples, RATE)
  for (const [second, value] of whole.entries()) expect(holed[second]).toBeCloseTo(value, 1)
})

it('loudness of nothing is nothing', () => expect(loudnessOf(new Float32Array(0), RATE)).toHaveLength(0))
