import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { constantsOf } from '#engine/constants.ts'
import type { EffortLine } from '#engine/recovery/effortLines.ts'
import { momentAt, strainAt, strainCurve } from '#engine/shape/strainCurve.ts'

const RULES = constantsOf({})
type Step = [seconds: number, start: number, end: number]

function linesOf(steps: readonly Step[]): EffortLine[] {
  let clock = 30
  return steps.map(([seconds, start, end], block) => {
    clock += 2
    const line = { block, from: clock, to: clock + seconds, start, end, allOut: false }
    clock += seconds
    return line
  })
}
const endOf = (lines: readonly EffortLine[]): number => (lines.at(-1)?.to ?? 0) + 20

/** What is asked for at a moment: the line's effort, the last one's in a lead-in, nothing before and after. */
function askedAt(lines: readonly EffortLine[], at: number): number {
  const line = lines.findLast(({ from }) => from <= at)
  if (!line || at > lines.at(-1)!.to) return 0
  return at >= line.to ? line.end : line.start + ((line.end - line.start) * (at - line.from)) / (line.to - line.from)
}

const anySteps = fc.array(fc.tuple(fc.integer({ min: 1, max: 120 }), fc.integer({ min: 0, max: 10 }), fc.integer({ min: 0, max: 10 })), {
  maxLength: 8,
}) as fc.Arbitrary<Step[]>

describe('strain', () => {
  it('rises with 40 s and falls with 70 s', () => {
    const lines = [{ block: 0, from: 0, to: 40, start: 8, end: 8, allOut: false }]
    const curve = strainCurve(lines, 110, RULES)
    const top = 8 * (1 - Math.exp(-1))
    expect(strainAt(curve, 40)).toBeCloseTo(top, 12)
    expect(strainAt(curve, 110)).toBeCloseTo(top * Math.exp(-1), 12)
    expect(curve.maximum).toEqual({ at: 40, value: expect.closeTo(top, 12) })
  })

  it('follows a ramp a time constant behind it', () => {
    const lines = [{ block: 0, from: 0, to: 600, start: 0, end: 10, allOut: false }]
    const lag = strainAt(strainCurve(lines, 600, RULES), 600)
    expect(lag).toBeCloseTo(10 - (10 / 600) * 40 * (1 - Math.exp(-15)), 12)
  })

  it('is what small steps of its equation give', () => {
    fc.assert(
      fc.property(anySteps, (steps) => {
        const lines = linesOf(steps)
        const end = endOf(lines)
        const curve = strainCurve(lines, end, RULES)
        const tick = 0.05
        let value = 0
        for (let i = 0; i * tick < end - 1; i++) {
          // Midpoint rule; the steps of effort lie on ticks.
          const gap = askedAt(lines, (i + 0.5) * tick) - value
          value += (tick * gap) / ((gap > 0 ? RULES.strainUp : RULES.strainDown) + tick / 2)
          if (i % 100 === 0) expect(Math.abs(strainAt(curve, (i + 1) * tick) - value)).toBeLessThan(0.01)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('says when it passes a level', () => {
    fc.assert(
      fc.property(anySteps, fc.double({ min: 0.5, max: 9.5, noNaN: true }), (steps, level) => {
        const lines = linesOf(steps)
        const curve = strainCurve(lines, endOf(lines), RULES)
        for (const [i, piece] of curve.pieces.entries()) {
          const end = curve.pieces[i + 1]?.start ?? piece.start
          if (Math.min(piece.start, end) >= level - 1e-6 || Math.max(piece.start, end) <= level + 1e-6) continue
          const at = momentAt(piece, level)
          expect(at).toBeGreaterThanOrEqual(piece.from)
          expect(at).toBeLessThanOrEqual(piece.to)
          expect(strainAt(curve, at)).toBeCloseTo(level, 3)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('adjoins from zero to the end, and its maximum is nowhere passed', () => {
    fc.assert(
      fc.property(anySteps, (steps) => {
        const lines = linesOf(steps)
        const end = endOf(lines)
        const curve = strainCurve(lines, end, RULES)
        let clock = 0
        for (const piece of curve.pieces) {
          expect(piece.from).toBe(clock)
          clock = piece.to
        }
        expect(clock).toBe(end)
        for (let at = 0; at <= end; at += 0.5) expect(strainAt(curve, at)).toBeLessThanOrEqual(curve.maximum.value + 1e-9)
        expect(strainAt(curve, curve.maximum.at)).toBeCloseTo(curve.maximum.value, 9)
      }),
    )
  })
})
