import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { repairAll } from '#engine/repairAll.ts'
import type { Finding, Severity } from '#engine/report.ts'
import { roughIn } from '#engine/roughIn/roughIn.ts'
import { TYPICAL_BIKES } from '#plan/defaults.ts'
import type { Block, Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { everyRepair, heavierThanBefore } from '#tests/support/everyRepair.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { cameraClass, studioClass } from '#tests/support/soundClasses.ts'
import { told } from '#tests/support/told.ts'

const WEIGHT: Record<Severity, number> = { hint: 0, warning: 1, problem: 2 }
const seeds = fc.integer({ min: 1, max: 1_000_000 })
const rooms = fc.constantFrom('studio' as const, 'online' as const)

/** The classes people start from, in both rooms and on every typical bike with as many steps. */
const wholeClasses = (): Ride[] =>
  [cameraClass(), studioClass(), demoRide('spark'), demoRide('ridge')].flatMap((ride) =>
    (['studio', 'online'] as const).flatMap((room) =>
      [ride.bike, ...TYPICAL_BIKES.filter(({ stepsPerUnit }) => stepsPerUnit === ride.bike.stepsPerUnit)].map((bike) => ({
        ...ride,
        room,
        bike,
      })),
    ),
  )

describe('a repair clears its finding or makes it smaller, and brings nothing else as heavy', () => {
  it('on the classes people start from', () => {
    for (const ride of wholeClasses()) expect(everyRepair(ride).troubles).toEqual([])
  })

  it('on rides as people write them', () => {
    fc.assert(
      fc.property(seeds, rooms, (seed, room) => {
        expect(everyRepair({ ...plausibleRide(seed), room }).troubles).toEqual([])
      }),
      { numRuns: 4 },
    )
  })

  it('on any ride', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 3, items: 4 }), (ride) => {
        expect(everyRepair(ride).troubles).toEqual([])
      }),
      { numRuns: 25 },
    )
  })

  it('on drafts', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const ride = plausibleRide(seed)
        const emptied = { ...ride, sections: ride.sections.map((section) => ({ ...section, blocks: [] })) }
        expect(everyRepair(roughIn(emptied, { seed })!.ride).troubles).toEqual([])
      }),
      { numRuns: 2 },
    )
  })
})

it('all repairs of a kind leave less of it, and nothing heavier that was not there', () => {
  const sizeOf = (findings: readonly Finding[]) => [findings.length, findings.reduce((sum, { amount }) => sum + (amount ?? 1), 0)]
  fc.assert(
    fc.property(seeds, rooms, (seed, room) => {
      const ride: Ride = { ...plausibleRide(seed), room }
      const before = computeRide(ride).findings
      for (const rule of new Set(before.filter(({ fixes }) => fixes.length > 0).map((finding) => finding.rule))) {
        const own = before.filter((finding) => finding.rule === rule)
        const after = computeRide(repairAll(own.map(({ id }) => id)).apply(ride)).findings
        const [count, amount] = sizeOf(after.filter((finding) => finding.rule === rule))
        const [countBefore, amountBefore] = sizeOf(own)
        expect(count! < countBefore! || (count === countBefore && amount! < amountBefore!), `${rule} of ${seed}`).toBe(true)
        const weight = Math.max(...own.map(({ severity }) => WEIGHT[severity]))
        expect(heavierThanBefore(before, after).filter(({ severity }) => WEIGHT[severity] > weight)).toEqual([])
      }
    }),
    { numRuns: 3 },
  )
})

describe('what stands in the way of a repair', () => {
  const counted = (blocks: Parameters<typeof aBlock>[], change: Partial<Ride> = {}): Ride => ({
    ...smallRide(),
    sections: [aSection('s', { song: aSong('m'), blocks: blocks.map((block) => aBlock(...block)) })],
    ...change,
  })
  const of = (ride: Ride, rule: string) => computeRide(ride).findings.find((finding) => finding.rule === rule)!

  it('is said instead of offering it: more effort that needs more recovery than there is', () => {
    const at = (steps: number, effort: number) => ({
      resistance: { kind: 'total', from: steps, to: steps } as const,
      cadence: { rpm: 60 },
      effort: { from: effort, to: effort },
    })
    const ride = counted([
      ['a', { ...at(7, 5), length: { counts: 128 } }],
      ['b', { ...at(12, 6), length: { counts: 128 } }],
      ['c', { ...at(10, 7), length: { counts: 64 } }],
    ])
    const { fixes, proposed, heldBack } = of(ride, 'intentAgainstDemand')
    expect(proposed.map(({ label }) => told(label))).toContain('Plan 8 instead')
    expect(fixes.map(({ label }) => told(label))).not.toContain('Plan 8 instead')
    expect(fixes.length > 0 || (heldBack && told(heldBack).includes('it needs'))).toBe(true)
  })

  it('is said instead of offering it: a longer recovery in a class that fills its slot', () => {
    const lasting = (seconds: number, steps: number, effort: number): Partial<Block> => ({
      length: { seconds },
      cadence: { rpm: 80 },
      resistance: { kind: 'total', from: steps, to: steps },
      effort: { from: effort, to: effort },
    })
    const blocks = [lasting(40, 4, 5), lasting(30, 8, 8), lasting(20, 3, 4), lasting(30, 6, 6), lasting(30, 0, 2)]
    const ride = (seconds: number): Ride => ({
      ...smallRide(),
      briefingSeconds: seconds,
      clearUpSeconds: 0,
      slotMinutes: 3,
      sections: [aSection('s', { blocks: blocks.map((block, i) => aBlock(`b${i}`, block)) })],
    })
    expect(of(ride(0), 'recoveryDebt').fixes.map(({ label }) => told(label))).toEqual(['Extend “b2” by 10 s'])
    const { fixes, heldBack } = of(ride(25), 'recoveryDebt')
    expect(fixes).toEqual([])
    expect(told(heldBack!)).toBe('“Extend “b2” by 10 s” would bring up another check: The ride is 5 s over the class length of 3:00.')
  })
})
