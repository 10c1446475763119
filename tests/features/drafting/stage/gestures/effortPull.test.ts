import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { LEVEL_HEIGHT } from '#features/drafting/stage/chartFrame.ts'
import { pulledEffort, withLevel } from '#features/drafting/stage/gestures/effortPull.ts'

const level = fc.integer({ min: 0, max: 20 }).map((halves) => halves / 2)
const effort = fc.record({ from: level, to: level })
const up = fc.double({ min: -400, max: 400, noNaN: true })
const part = fc.constantFrom('from' as const, 'level' as const, 'to' as const)
const isOn = (value: number, step: number) => Math.abs(value / step - Math.round(value / step)) < 1e-9

describe('pulling the curve', () => {
  it('stays within 0 and 10 and on the step, whatever is pulled however far', () => {
    fc.assert(
      fc.property(effort, part, up, fc.boolean(), (before, held, far, fine) => {
        const { from, to } = pulledEffort(before, held, far, fine)
        for (const value of [from, to]) {
          expect(value).toBeGreaterThanOrEqual(0)
          expect(value).toBeLessThanOrEqual(10)
          expect(isOn(value, fine ? 0.1 : 0.5)).toBe(true)
        }
      }),
    )
  })

  it('keeps the difference of the ends when all of it is pulled, and the other end when one is', () => {
    fc.assert(
      fc.property(effort, up, fc.boolean(), (before, far, fine) => {
        const all = pulledEffort(before, 'level', far, fine)
        expect(all.to - all.from).toBeCloseTo(before.to - before.from, 9)
        expect(pulledEffort(before, 'from', far, fine).to).toBe(before.to)
        expect(pulledEffort(before, 'to', far, fine).from).toBe(before.from)
      }),
    )
  })

  it('follows the pointer to within half a step', () => {
    fc.assert(
      fc.property(level, fc.integer({ min: -150, max: 150 }), (from, far) => {
        const wanted = from + far / LEVEL_HEIGHT
        fc.pre(wanted >= 0 && wanted <= 10)
        expect(Math.abs(pulledEffort({ from, to: from }, 'level', far, false).from - wanted)).toBeLessThanOrEqual(0.25 + 1e-9)
      }),
    )
  })

  it('takes a ramp as far as its higher end goes', () => {
    expect(pulledEffort({ from: 4, to: 8 }, 'level', 10 * LEVEL_HEIGHT, false)).toEqual({ from: 6, to: 10 })
    expect(pulledEffort({ from: 4, to: 8 }, 'level', -10 * LEVEL_HEIGHT, false)).toEqual({ from: 0, to: 4 })
    expect(pulledEffort({ from: 4, to: 4 }, 'to', 2.4 * LEVEL_HEIGHT, false)).toEqual({ from: 4, to: 6.5 })
    expect(pulledEffort({ from: 4, to: 4 }, 'to', 2.43 * LEVEL_HEIGHT, true)).toEqual({ from: 4, to: 6.4 })
    expect(withLevel({ from: 4, to: 8 }, 'to', 12)).toEqual({ from: 4, to: 10 })
  })
})
