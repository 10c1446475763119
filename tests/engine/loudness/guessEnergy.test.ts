import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { guessEnergy } from '#engine/loudness/guessEnergy.ts'
import { meanLoudness } from '#engine/loudness/meanLoudness.ts'

const level = (lufs: number, seconds = 200) => new Float32Array(seconds).fill(lufs)

describe('mean loudness', () => {
  it('averages power, and takes seconds as far as they lie inside', () => {
    expect(meanLoudness([-10, -20], 0, 2)).toBeCloseTo(10 * Math.log10((0.1 + 0.01) / 2), 12)
    expect(meanLoudness([-10, -20], 0.5, 1.5)).toBeCloseTo(10 * Math.log10((0.1 + 0.01) / 2), 12)
    expect(meanLoudness([-10, -20], 0.25, 1)).toBeCloseTo(-10, 12)
    expect(meanLoudness([-10], 3, 5)).toBeUndefined()
    expect(meanLoudness([-10], -5, 0)).toBeUndefined()
  })
})

describe('a guess at a song’s energy', () => {
  it('is 5 for a loud, dense and steady song, 1 for a quiet slow one with few loud moments, and nothing for silence', () => {
    expect(guessEnergy(level(-9), 150)).toBe(5)
    const ballad = [...level(-30, 170), ...level(-20, 30)]
    expect(guessEnergy(ballad, 80)).toBe(1)
    expect(guessEnergy(level(-70), 128)).toBeNull()
    expect(guessEnergy([], undefined)).toBeNull()
  })

  it('reads half and double tempo alike, and never leaves 1 to 5', () => {
    const songs = fc.array(fc.float({ min: -70, max: 0, noNaN: true }), { minLength: 1, maxLength: 400 })
    fc.assert(
      fc.property(songs, fc.double({ min: 40, max: 240, noNaN: true }), (loudness, bpm) => {
        const energy = guessEnergy(loudness, bpm)
        expect(guessEnergy(loudness, bpm * 2)).toBe(energy)
        if (energy !== null) expect([1, 2, 3, 4, 5]).toContain(energy)
      }),
    )
  })

  it('is no less for a song that is louder throughout', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -40, max: -12, noNaN: true }), { minLength: 5 }), (loudness) => {
        const louder = loudness.map((each) => each + 6)
        expect(guessEnergy(louder, 120)!).toBeGreaterThanOrEqual(guessEnergy(loudness, 120)!)
      }),
    )
  })

  it('leaves pauses out', () => {
    expect(guessEnergy([...level(-9), ...level(-70, 400)], 150)).toBe(5)
  })
})
