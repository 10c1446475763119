import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { analyseInSteps } from '#audio/dsp/analyseBeats.ts'
import { fMeasure } from '#tests/bench/corpus/fMeasure.ts'
import { analyseBeats } from '#tests/support/analyseBeats.ts'
import { composedSong } from '#tests/support/composed/composedSong.ts'
import { madeSong } from '#tests/support/madeSong.ts'

const heardOf = (song: ReturnType<typeof madeSong>, window?: { from: number; to: number }) =>
  analyseBeats(song.samples, song.sampleRate, window ? { window } : {})!

describe('the beat of a song', () => {
  it('is found to the hundredth of a beat a minute, within ten milliseconds, with its ones', () => {
    const song = madeSong({ bpm: 123.45, seconds: 60, firstBeat: 0.71 })
    const heard = heardOf(song)
    expect(heard.bpm).toBeCloseTo(123.45, 1)
    expect(heard.beatsPerBar).toBe(4)
    expect(fMeasure(heard.beats, song.beats, 0.01, 0)).toBeGreaterThan(0.98)
    expect(fMeasure(heard.downbeats, song.downbeats, 0.07, 0)).toBeGreaterThan(0.95)
    expect(heard.firstBeat).toBeCloseTo(0.71, 1)
    expect(heard.steady).toBe(true)
    expect(heard.drifts).toEqual([])
  })

  it('goes on as three beats a bar where the music does', () => {
    const song = madeSong({ bpm: 108, seconds: 50, beatsPerBar: 3 })
    const heard = heardOf(song)
    expect(heard.beatsPerBar).toBe(3)
    expect(fMeasure(heard.downbeats, song.downbeats)).toBeGreaterThan(0.95)
  })

  it('does not depend on the rate, the loudness or the silence before', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(22_050, 32_000, 44_100, 48_000),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 95, max: 145, noNaN: true }),
        (sampleRate, loudness, firstBeat, bpm) => {
          const song = madeSong({ bpm, seconds: 30, firstBeat, sampleRate })
          const heard = heardOf({ ...song, samples: song.samples.map((sample) => sample * loudness) })
          expect(Math.abs(heard.bpm / bpm - 1)).toBeLessThan(0.002)
          expect(fMeasure(heard.beats, song.beats)).toBeGreaterThan(0.95)
        },
      ),
      { numRuns: 8 },
    )
  })

  it('takes the octave that the cadence asks for', () => {
    const song = madeSong({ bpm: 100, seconds: 30 })
    expect(heardOf(song, { from: 180, to: 215 }).bpm).toBeCloseTo(200, 0)
  })

  it('says where a constant tempo does not hold', () => {
    const song = madeSong({ bpm: 120, seconds: 60, changes: { at: 40, bpm: 132 } })
    const { drifts, steady } = heardOf(song)
    expect(drifts.length > 0 || !steady).toBe(true)
    expect(drifts.at(-1)!.to).toBeGreaterThan(45)
  })

  it('is null where there is none: too short, or silent', () => {
    expect(analyseBeats(new Float32Array(44_100), 44_100)).toBeNull()
    expect(analyseBeats(new Float32Array(441_000), 44_100)).toBeNull()
  })

  it('gives only finite, rising times for noise and for a single click', () => {
    const noise = madeSong({ bpm: 40, seconds: 1 }).samples
    for (const samples of [Float32Array.from({ length: 441_000 }, (_, i) => noise[i % noise.length]! * Math.sin(i)), click()]) {
      const heard = analyseBeats(samples, 44_100)
      if (!heard) continue
      expect(heard.beats.every((second, i) => Number.isFinite(second) && (i === 0 || second > heard.beats[i - 1]!))).toBe(true)
      expect(heard.confidence).toBeGreaterThanOrEqual(0)
      expect(heard.confidence).toBeLessThanOrEqual(1)
    }
  })

  it('comes in steps, each a share that does not fall', () => {
    const song = madeSong({ bpm: 120, seconds: 60 })
    const shares = [...analyseInSteps(song.samples, song.sampleRate)]
    expect(shares.length).toBeGreaterThan(20)
    expect(shares.every((share, i) => share >= (shares[i - 1] ?? 0) && share <= 1)).toBe(true)
  })

  it('reads no more of a longer song in one step, but takes more of them', () => {
    const [short, long] = [12, 42].map((seconds) => {
      const { samples, sampleRate } = madeSong({ bpm: 120, seconds })
      const counted = countingReads(samples)
      const steps = analyseInSteps(counted.samples, sampleRate)
      const reads: number[] = []
      while (!steps.next().done) reads.push(counted.sinceLast())
      return { most: Math.max(...reads), steps: reads.length }
    })
    // Half a million samples, some read by two windows that overlap.
    expect(short!.most).toBeLessThanOrEqual(2 ** 20)
    expect(long!.most).toBeLessThanOrEqual(2 ** 20)
    // A thousand frames of ten milliseconds at most in one step of hearing onsets.
    expect(long!.steps - short!.steps).toBeGreaterThanOrEqual(3)
  })

  it('names eights that are ones, eight beats apart, where the parts of a song begin', () => {
    const seeds = Array.from({ length: 12 }, (_, n) => 700 + n)
    const right = seeds.filter((seed) => {
      const song = composedSong(seed, { seconds: 60 })
      const heard = analyseBeats(song.samples, song.sampleRate)!
      expect(heard.downbeats).toEqual(expect.arrayContaining(heard.eights))
      for (const [i, second] of heard.eights.entries()) {
        if (i > 0) expect(heard.beats.indexOf(second) - heard.beats.indexOf(heard.eights[i - 1]!)).toBe(8)
      }
      return fMeasure(heard.eights, song.eights) > 0.9
    })
    expect(right.length).toBeGreaterThanOrEqual(8)
  })
})

function click(): Float32Array {
  const samples = new Float32Array(441_000)
  samples.fill(0.9, 200_000, 200_050)
  return samples
}

/** Samples that count how often one of them is looked at. */
function countingReads(samples: Float32Array): { samples: Float32Array; sinceLast: () => number } {
  let reads = 0
  const counted = new Proxy(samples, {
    get: (target, key) => {
      if (typeof key === 'string' && key <= '9') reads++
      const value: unknown = Reflect.get(target, key, target)
      return typeof value === 'function' ? value.bind(target) : value
    },
  })
  const sinceLast = () => {
    const count = reads
    reads = 0
    return count
  }
  return { samples: counted, sinceLast }
}
