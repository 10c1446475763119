import fc from 'fast-check'
import { expect, it } from 'vitest'
import { fitGrid } from '#audio/dsp/fitGrid.ts'
import { fitLine } from '#audio/dsp/fitLine.ts'

it('a line goes through the beats, whatever a third of them say', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.3, max: 1, noNaN: true }),
      fc.array(fc.double({ min: -0.2, max: 0.2, noNaN: true }), { minLength: 40, maxLength: 40 }),
      (period, astray) => {
        const numbers = Array.from({ length: 120 }, (_, n) => n)
        const seconds = numbers.map((n) => 1 + n * period + (n % 3 === 1 ? astray[Math.floor(n / 3)]! : 0))
        const weights = numbers.map(() => 1)
        const line = fitLine(numbers, seconds, weights, { period: period * 1.0002, start: 0.99 })
        expect(Math.abs(line.period / period - 1)).toBeLessThan(1e-4)
        expect(Math.abs(line.start - 1)).toBeLessThan(0.005)
      },
    ),
  )
})

it('a grid keeps the period asked for to a fraction of a beat, whatever the onsets are', () => {
  fc.assert(
    fc.property(
      fc.array(fc.nat(2999), { maxLength: 60 }),
      fc.integer({ min: 28, max: 125 }),
      fc.constantFrom(0, 0.25, 0.5, 0.75),
      (frames, period, turn) => {
        const curve = new Float32Array(3000)
        for (const frame of frames) curve[frame] = 1
        const line = fitGrid(curve, 100, period, turn)
        expect(Math.abs((line.period * 100) / period - 1) * (3000 / period)).toBeLessThanOrEqual(0.1501)
        expect(line.start).toBeGreaterThanOrEqual(0)
        expect(line.start).toBeLessThan(line.period + 1e-9)
      },
    ),
  )
})
