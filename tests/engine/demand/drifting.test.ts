import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { reserveAt } from '#engine/reserve/reserveCurve.ts'
import { drifting, driftingRide, heard } from '#tests/support/driftingRide.ts'
import { heartShareAt } from '#tests/support/heartShareAt.ts'
import { stepDrifting } from '#tests/support/reference/drifting.ts'

/** How far the engine may be from a yardstick that looks the tempo up at every step. */
const AIM = 1e-3

type Worst = Record<'effort' | 'watts' | 'heart' | 'reserve', number>

/** The furthest that any figure of random rides on such songs is from the yardstick. */
function worstOn(grids: typeof drifting): Worst {
  const worst: Worst = { effort: 0, watts: 0, heart: 0, reserve: 0 }
  const see = (what: keyof Worst, is: number, should: number) => {
    worst[what] = Math.max(worst[what], Math.abs(is - should))
  }
  fc.assert(
    fc.property(driftingRide(grids), (ride) => {
      const report = computeRide(ride)
      const stepped = stepDrifting(ride, report)
      for (const [r, { demand, response, reserve }] of report.riders.entries()) {
        const yard = stepped[r]!
        for (const [i, asked] of demand.entries()) {
          if (!asked) continue
          see('effort', asked.mean, yard.effort[i]!)
          see('watts', asked.watts, yard.watts[i]!)
        }
        for (const [t, share] of yard.heart.entries()) {
          see('heart', heartShareAt(response, t), share)
          see('reserve', reserveAt(reserve, t), yard.reserve[t]!)
        }
      }
    }),
    { numRuns: 24 },
  )
  return worst
}

describe('effort, watts, heart and reserve', () => {
  it('are those of the tempo at every moment on songs that drift, with odd bars', () => {
    const { effort, watts, heart, reserve } = worstOn(drifting)
    expect(Math.max(effort, heart, reserve)).toBeLessThan(AIM)
    expect(watts).toBeLessThan(0.01)
  })

  it('are those of each eight on songs heard beat by beat, whose jitter legs do not follow', () => {
    const { effort, watts, heart, reserve } = worstOn(heard)
    expect(Math.max(heart, reserve)).toBeLessThan(AIM)
    expect(watts).toBeLessThan(0.1)
    // Where the jitter of single beats straddles a bend of the effort scale their mean is another than the eight's.
    expect(effort).toBeLessThan(0.05)
  })
})
