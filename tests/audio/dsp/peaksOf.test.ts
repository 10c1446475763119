import fc from 'fast-check'
import { expect, it } from 'vitest'
import { peaksOf } from '#audio/dsp/peaksOf.ts'

it('peaks are the largest amplitude of each bin, either way, up to full scale', () => {
  const samples = new Float32Array(100)
  samples.set([0.5, -1], 10)
  samples[50] = -0.2
  samples[99] = 3
  expect([...peaksOf(samples, 100, 10)]).toEqual([0, 255, 0, 0, 0, 51, 0, 0, 0, 255])
})

it('peaks are fifty a second where nothing else is asked, the last bin shorter', () => {
  expect(peaksOf(new Float32Array(44_100), 44_100)).toHaveLength(50)
  expect(peaksOf(new Float32Array(44_101), 44_100)).toHaveLength(51)
  expect(peaksOf(new Float32Array(0), 44_100)).toHaveLength(0)
})

it('every sample is in one bin, at rates that bins do not divide as well', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(8000, 11_025, 44_100, 48_000),
      fc.integer({ min: 1, max: 200 }),
      fc.nat(11_024),
      (rate, perSecond, place) => {
        const samples = new Float32Array(11_025)
        samples[place] = -1
        const peaks = peaksOf(samples, rate, perSecond)
        expect(peaks.filter((peak) => peak > 0)).toHaveLength(1)
        expect(peaks[Math.floor((place * perSecond) / rate)]).toBe(255)
      },
    ),
  )
})

it('samples that are no numbers are silence', () => {
  expect([...peaksOf(Float32Array.of(Number.NaN, 0.2, Number.NaN), 3, 1)]).toEqual([51])
})
