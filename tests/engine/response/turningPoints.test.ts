import fc from 'fast-check'
import { expect, it } from 'vitest'
import { crossings, type Relaxation, relaxedAt, turningPoints } from '#engine/response/relaxation.ts'

const piece = fc.record({
  from: fc.constant(0),
  to: fc.double({ min: 20, max: 400, noNaN: true }),
  follower: fc.tuple(
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: -0.02, max: 0.02, noNaN: true }),
    fc.double({ min: -1e-4, max: 1e-4, noNaN: true }),
  ),
  difference: fc.double({ min: -1, max: 1, noNaN: true }),
  tau: fc.double({ min: 5, max: 80, noNaN: true }),
})

/** Where the slope of a piece changes its sign, looked for in short steps. */
function turnsOf({ to, follower: [, b, c], difference, tau }: Relaxation, steps = 20_000): number[] {
  const slope = (t: number) => b + 2 * c * t - (difference / tau) * Math.exp(-t / tau)
  const found: number[] = []
  for (let i = 0; i < steps; i++) if (slope((i * to) / steps) * slope(((i + 1) * to) / steps) < 0) found.push(((i + 0.5) * to) / steps)
  return found
}

it('the turning points of a piece are those found by looking at it closely', () => {
  fc.assert(
    fc.property(piece, (one: Relaxation) => {
      const said = turningPoints(one)
      const looked = turnsOf(one)
      expect(said).toHaveLength(looked.length)
      for (const [i, at] of said.entries()) {
        expect(Math.abs(at - looked[i]!)).toBeLessThan(one.to / 10_000)
        expect(Number.isFinite(relaxedAt(one, at))).toBe(true)
      }
    }),
    { numRuns: 200 },
  )
})

it('a piece with two turning points crosses a level between them thrice', () => {
  const wave: Relaxation = { from: 0, to: 200, follower: [0, 0.012, -1e-4], difference: 0.5, tau: 20 }
  const [low, high] = turningPoints(wave)
  expect(turningPoints(wave)).toHaveLength(2)
  const level = (relaxedAt(wave, low!) + relaxedAt(wave, high!)) / 2
  const all = crossings(wave, level)
  expect(all).toHaveLength(3)
  for (const at of all) expect(relaxedAt(wave, at)).toBeCloseTo(level, 9)
})
