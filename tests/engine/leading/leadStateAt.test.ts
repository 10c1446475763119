import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { LeadEvent, LeadLog } from '#engine/leading/leadLog.ts'
import { leadStateAt, stateOf } from '#engine/leading/leadStateAt.ts'
import type { Plan } from '#engine/leading/led.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'

const planOf = (ride: Plan['ride']): Plan => ({ ride, report: computeRide(ride) })
const logOf = (...events: LeadEvent[]): LeadLog => ({ slotFrom: 0, startedAt: 0, events })
const ridge = planOf(demoRide('ridge'))

describe('with nothing led otherwise', () => {
  it('is the plan, for every span of every ride', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.double({ min: 0, max: 1, noNaN: true }), (ride, share) => {
        const plan = planOf(ride)
        const led = ledClass(plan, logOf())
        expect(led.ride).toBe(ride)
        for (const span of plan.report.spans) {
          const at = span.from + share * (span.to - span.from) * 0.999
          if (at >= span.to) continue
          const state = stateOf(led, at)
          expect(state).toMatchObject({ phase: span.kind, at, total: plan.report.totals.total })
          expect(state.block).toBe(span.block)
          expect(state.secondsLeft).toBe(span.to - at)
          expect(state.behind).toBeCloseTo(0, 6)
        }
        expect(stateOf(led, plan.report.totals.total).phase).toBe('finished')
      }),
    )
  })

  it('begins each block at its own first moment and not before', () => {
    const led = ledClass(ridge, logOf())
    for (const { index, from } of ridge.report.blocks) {
      expect(stateOf(led, from).block).toBe(index)
      if (from > 0) expect(stateOf(led, from - 1e-9).block).not.toBe(index)
    }
  })

  it('counts down the eights and the counts of a block', () => {
    const led = ledClass(ridge, logOf())
    const second = ridge.report.blocks[1]!
    const count = 60 / 166
    const at = (counts: number) => stateOf(led, second.from + (counts + 1e-6) * count)
    expect(at(0)).toMatchObject({ eights: { left: 16, of: 16 }, countsLeft: 128, beat: { count: 1, of: 8 } })
    expect(at(7)).toMatchObject({ eights: { left: 16 }, countsLeft: 121, beat: { count: 8 } })
    expect(at(8)).toMatchObject({ eights: { left: 15 }, beat: { count: 1 } })
    expect(at(127)).toMatchObject({ eights: { left: 1 }, countsLeft: 1, beat: { count: 8 } })
    expect(leadStateAt(ridge, logOf(), second.to).eights).toEqual({ left: 16, of: 16 })
  })
})
