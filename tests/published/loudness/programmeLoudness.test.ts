import { describe, expect, it } from 'vitest'
import { kWeighting } from '#audio/dsp/kWeighting.ts'
import { loudnessOf } from '#audio/dsp/loudnessOf.ts'

/** Recommendation ITU-R BS.1770-5 (11/2023), annex 1: tables 1 and 2, filter coefficients at 48 kHz. */
const TABLE_1 = { b: [1.53512485958697, -2.69169618940638, 1.19839281085285], a: [-1.69065929318241, 0.73248077421585] }
const TABLE_2 = { b: [1, -2, 1], a: [-1.99004745483398, 0.99007225036621] }

/**
 * The same annex: “If a 0 dB FS, 997 Hz (1 kHz) sine wave is applied to the left, center, or right channel input, the
 * indicated loudness will equal –3.01 LKFS.”
 */
const FULL_SCALE_SINE = -3.01

/** The same annex, gating: blocks under –70 LKFS do not count. */
const QUIETEST = -70

const sine = (hertz: number, sampleRate: number, decibels = 0, seconds = 4) =>
  Float32Array.from({ length: seconds * sampleRate }, (_, i) => 10 ** (decibels / 20) * Math.sin((2 * Math.PI * hertz * i) / sampleRate))

describe('loudness as ITU-R BS.1770 weighs it', () => {
  it('has the coefficients of the tables at 48 kHz', () => {
    const [shelf, highPass] = kWeighting(48_000)
    for (const [ours, theirs] of [
      [shelf, TABLE_1],
      [highPass, TABLE_2],
    ] as const) {
      for (const [i, value] of theirs.b.entries()) expect(ours.b[i]).toBeCloseTo(value, 10)
      for (const [i, value] of theirs.a.entries()) expect(ours.a[i]).toBeCloseTo(value, 10)
    }
  })

  it.each([8000, 22_050, 32_000, 44_100, 48_000, 96_000])('reads −3.01 for the full-scale sine of 997 Hz at %i Hz', (sampleRate) => {
    for (const second of loudnessOf(sine(997, sampleRate), sampleRate).subarray(1)) expect(second).toBeCloseTo(FULL_SCALE_SINE, 1)
  })

  it('falls with the level, decibel for decibel, down to the absolute gate', () => {
    for (const decibels of [-10, -23, -40]) {
      expect(loudnessOf(sine(997, 48_000, decibels), 48_000)[2]).toBeCloseTo(FULL_SCALE_SINE + decibels, 1)
    }
    expect(loudnessOf(sine(997, 48_000, -80), 48_000)[2]).toBe(QUIETEST)
    expect([...loudnessOf(new Float32Array(96_000), 48_000)]).toEqual([QUIETEST, QUIETEST])
  })

  it('hears the treble 4 dB louder and the sub-bass far quieter, as the weighting curve says', () => {
    const at = (hertz: number) => loudnessOf(sine(hertz, 48_000), 48_000)[2]! - FULL_SCALE_SINE
    expect(at(10_000)).toBeGreaterThan(3)
    expect(at(10_000)).toBeLessThan(3.6)
    expect(at(20)).toBeLessThan(-12)
  })
})
