import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { demandAt, effortWith } from '#engine/demand/demandOfBlock.ts'
import { reserveOfEffort } from '#engine/demand/effortOfReserve.ts'
import { apartWithin, gapPieces } from '#engine/demand/intentGap.ts'
import { cutAt, type Quadratic, quadraticAt } from '#engine/demand/quadratic.ts'
import type { Block, Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { effortOfReserve } from '#tests/support/reference/effortOfReserve.ts'

describe('demand', () => {
  it('never falls when resistance rises', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 2, items: 4 }), (ride) => {
        const heavier: Ride = {
          ...ride,
          bike: { ...ride.bike, base: Math.min(ride.bike.max, ride.bike.base + 1 / ride.bike.stepsPerUnit) },
          datum: 'base',
        }
        const [light, heavy] = [computeRide({ ...ride, datum: 'base' }), computeRide(heavier)]
        for (const [r, { demand }] of light.riders.entries()) {
          for (const [i, asked] of demand.entries()) {
            // The base a step up is the whole ride a step up, unless a call met the end of the knob or took all off.
            const [a, b] = [light.blocks[i]!.ledger.after.nominal, heavy.blocks[i]!.ledger.after.nominal]
            if (asked === null || a > b) continue
            expect(heavy.riders[r]!.demand[i]!.mean).toBeGreaterThanOrEqual(asked.mean - 1e-9)
          }
        }
      }),
      { numRuns: 60 },
    )
  })

  it('maps shares of the reserve to efforts and back', () => {
    expect([0, 0.3, 0.4, 0.6, 0.9, 1, 1.3].map((share) => effortWith(share, 0))).toEqual([0, 2, 3, 5, 9, 10, 10])
    fc.assert(
      fc.property(fc.double({ min: 0, max: 10, noNaN: true }), fc.double({ min: 0, max: 2, noNaN: true }), (effort, share) => {
        expect(effortWith(reserveOfEffort(effort), 0)).toBeCloseTo(effort, 9)
        expect(effortWith(share, 0)).toBeCloseTo(effortOfReserve(share), 9)
      }),
    )
  })

  it('is cut into pieces that adjoin, cover the block, and stay within 0 and 10', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 2, items: 5 }), (ride) => {
        const { blocks, riders } = computeRide(ride)
        for (const { demand } of riders) {
          for (const [i, asked] of demand.entries()) {
            if (asked === null) continue
            const { from, to, cadence } = blocks[i]!
            // The tempo of a song may jump inside a block; what is asked jumps with it.
            const jumps = cadence.kind === 'turning' && cadence.pieces !== undefined
            expect([asked.pieces[0]!.from, asked.pieces.at(-1)!.to]).toEqual([from, to])
            asked.pieces.slice(1).forEach((piece, n) => {
              const before = asked.pieces[n]!
              expect(piece.from).toBe(before.to)
              if (!jumps) expect(quadraticAt(before.effort, before.to - before.from)).toBeCloseTo(piece.effort[0], 6)
            })
            for (let n = 0; n <= 4; n++) {
              const value = demandAt(asked.pieces, from + ((to - from) * n) / 4)
              expect(value).toBeGreaterThanOrEqual(-1e-9)
              expect(value).toBeLessThanOrEqual(10 + 1e-9)
            }
          }
        }
      }),
      { numRuns: 60 },
    )
  })

  it('adds half for standing and 0.3 more for a move, to effort and not to watts', () => {
    const of = (change: Partial<Block>) => {
      const ride = structuredClone(demoRide('spark'))
      const section = ride.sections[1]!
      Object.assign(section.blocks, { 1: { ...(section.blocks[1] as Block), ...change } })
      const report = computeRide(ride)
      return report.riders[1]!.demand[report.sections[1]!.blocks.from + 1]!
    }
    const [seated, standing, moving] = [
      of({}),
      of({ posture: 'standing' }),
      of({ posture: 'standing', move: { name: 'press', counts: 8 } }),
    ]
    expect(standing.mean - seated.mean).toBeCloseTo(0.5, 12)
    expect(moving.mean - seated.mean).toBeCloseTo(0.8, 12)
    expect(of({ move: { name: 'shoulder roll', counts: 8 } }).mean).toBe(seated.mean)
    expect([standing.watts, moving.watts]).toEqual([seated.watts, seated.watts])
  })

  it('finds the stretches apart that sampling finds', () => {
    const arbitraryEffort = fc.tuple(...[8, 0.2, 0.002].map((size) => fc.double({ min: -size, max: size, noNaN: true })))
    fc.assert(
      fc.property(arbitraryEffort, fc.integer({ min: 5, max: 120 }), (effort, length) => {
        const played = { from: 0, to: length, block: { effort: { from: 0, to: 0 } } }
        const gap = gapPieces(played, [{ from: 0, to: length, effort: effort as unknown as Quadratic }])
        const apart = apartWithin(gap, 1.5)
        const exact = apart.reduce((sum, { from, to }) => sum + to - from, 0)
        const count = 2000
        const beyond = Array.from(
          { length: count },
          (_, i) => Math.abs(quadraticAt(effort as unknown as Quadratic, ((i + 0.5) / count) * length)) > 1.5,
        )
        expect(Math.abs(exact - (beyond.filter(Boolean).length * length) / count)).toBeLessThanOrEqual((6 * length) / count)
        for (const { excess } of apart) expect(excess).toBeGreaterThan(0)
      }),
      { numRuns: 300 },
    )
  })

  it('solves quadratics without losing digits', () => {
    // Roots 1e-6 and 1e6: the textbook formula would lose the small one.
    expect(cutAt([1, -(1e6 + 1e-6), 1], [0], 2e6)).toEqual([0, expect.closeTo(1e-6, 12), expect.closeTo(1e6, 3), 2e6])
    expect(cutAt([4, 0, -1], [0], 10)).toEqual([0, 2, 10])
    expect(cutAt([3, 0, 0], [3], 10)).toEqual([0, 10])
  })
})

describe('the order of blocks', () => {
  it('does not change mean intent or mean watts of a section whose totals are stated', () => {
    const ride = demoRide('spark')
    const first = computeRide(ride)
    fc.assert(
      fc.property(fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6], { minLength: 7, maxLength: 7 }), (order) => {
        const sections = ride.sections.map((section) =>
          section.id === 's4' ? { ...section, blocks: order.map((i) => section.blocks[i]!) } : section,
        )
        const shuffled = computeRide({ ...ride, sections })
        expect(shuffled.overall.meanEffort).toBeCloseTo(first.overall.meanEffort, 10)
        const work = (report: typeof first, rider: number) =>
          report.riders[rider]!.demand.reduce((sum, asked, i) => sum + asked!.watts * (report.blocks[i]!.to - report.blocks[i]!.from), 0)
        for (const rider of [0, 1, 2]) expect(work(shuffled, rider)).toBeCloseTo(work(first, rider), 6)
      }),
      { numRuns: 30 },
    )
  })
})
