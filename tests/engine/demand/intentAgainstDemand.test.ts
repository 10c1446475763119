import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Finding, RideReport } from '#engine/report.ts'
import type { Block, Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { told } from '#tests/support/told.ts'

const RULE = 'intentAgainstDemand'
const differences = ({ findings }: RideReport): Finding[] => findings.filter(({ rule }) => rule === RULE)

/** A demo ride with its first push changed. */
function withPush(change: Partial<Block>): Ride {
  const ride = structuredClone(demoRide('spark'))
  const section = ride.sections.find(({ id }) => id === 's4')!
  Object.assign(section, { blocks: section.blocks.map((block) => (block.id === 's4b2' ? ({ ...block, ...change } as Block) : block)) })
  return ride
}

describe('intent against demand', () => {
  it('finds nothing in the demo rides, which were drafted with it', () => {
    expect(differences(computeRide(demoRide('spark')))).toEqual([])
    expect(differences(computeRide(demoRide('ridge')))).toEqual([])
  })

  it('names the steps that close a difference, and applying them closes it and touches no other total', () => {
    const ride = withPush({ resistance: { kind: 'total', from: 2, to: 2 } })
    const before = computeRide(ride)
    const [found] = differences(before)
    expect(told(found!.text)).toBe(
      '“push 1”, ½ turn over base at 92 rpm, is about 4½ of 10 for the regular rider and you plan 9; add 1¼ turns.',
    )
    const after = computeRide(found!.fixes[0]!.command.apply(ride))
    expect(differences(after)).toEqual([])
    const totals = ({ blocks }: RideReport) => blocks.map(({ ledger }) => ledger.after.nominal)
    expect(totals(after).map((total, i) => total - totals(before)[i]!)).toEqual(totals(before).map((_, i) => (i === found!.block ? 5 : 0)))
  })

  it('keeps the totals after a block whose followers state changes', () => {
    const ride = withPush({ resistance: { kind: 'change', mode: 'exact', steps: 0 } })
    Object.assign(ride.sections.find(({ id }) => id === 's4')!.blocks, {
      2: {
        ...(ride.sections.find(({ id }) => id === 's4')!.blocks[2] as Block),
        resistance: { kind: 'change', mode: 'exact', steps: -1 },
      },
    })
    const before = computeRide(ride)
    const found = differences(before)[0]!
    const fixed = found.fixes[0]!.command.apply(ride)
    const after = computeRide(fixed)
    expect(after.blocks[found.block! + 1]!.ledger.after).toEqual(before.blocks[found.block! + 1]!.ledger.after)
    expect((fixed.sections[3]!.blocks[2] as Block).resistance).toEqual({ kind: 'change', mode: 'exact', steps: -1 - 5 })
  })

  it('moves the aim of a single total with it', () => {
    const ride = withPush({ resistance: { kind: 'total', from: 2, to: 2, aim: 2 } })
    const fixed = differences(computeRide(ride))[0]!.fixes[0]!.command.apply(ride)
    expect(differences(computeRide(fixed))).toEqual([])
    expect((fixed.sections[3]!.blocks[1] as Block).resistance).toEqual({ kind: 'total', from: 7, to: 7 })
  })

  it('keeps an open total open', () => {
    const ride = withPush({ resistance: { kind: 'total', from: 2, to: 2, orMore: true } })
    const fixed = differences(computeRide(ride))[0]!.fixes[0]!.command.apply(ride)
    expect(differences(computeRide(fixed))).toEqual([])
    expect((fixed.sections[3]!.blocks[1] as Block).resistance).toEqual({ kind: 'total', from: 7, to: 7, orMore: true })
  })

  it('offers to plan what the bike asks instead', () => {
    const ride = withPush({ resistance: { kind: 'total', from: 2, to: 2 } })
    const plan = differences(computeRide(ride))[0]!.fixes[1]!
    expect(told(plan.label)).toBe('Plan 4½ instead')
    expect(differences(computeRide(plan.command.apply(ride)))).toEqual([])
  })

  it('says which step prevents it on a coarse scale', () => {
    const ride = withPush({ effort: { from: 5, to: 5 } })
    Object.assign(ride, {
      bike: { ...ride.bike, stepsPerUnit: 1, points: ride.bike.points.map(([setting, watts]) => [setting, watts ** 1.25]) },
    })
    for (const section of ride.sections) {
      for (const block of section.blocks as Block[]) Object.assign(block, { resistance: { kind: 'total', from: 1, to: 1 } })
    }
    const coarse = differences(computeRide(ride)).find(({ text }) => told(text).includes('the next step of this bike is already'))
    expect(coarse).toBeDefined()
  })

  it('says that the knob ends and that base is reached, and is silent about still legs', () => {
    const reasons = (change: Partial<Block>, bike: Partial<Ride['bike']> = {}) => {
      const ride = withPush(change)
      const found = computeRide({ ...ride, bike: { ...ride.bike, ...bike } })
      const text = differences(found).find(({ blockId }) => blockId === 's4b2')?.text
      return text && told(text)
    }
    expect(reasons({ effort: { from: 10, to: 10 }, resistance: { kind: 'total', from: 2, to: 2 } }, { max: 3 })).toContain(
      'the knob ends at 3',
    )
    const easy: Partial<Block> = { effort: { from: 0, to: 0 }, resistance: { kind: 'total', from: 1, to: 1 } }
    expect(reasons({ ...easy, terrain: 'flat' })).toContain('nothing left to take off')
    expect(reasons(easy)).toContain('it goes hard, which takes at least 1 turn over base')
    expect(reasons({ cadence: 'legsStill' })).toBeUndefined()
  })

  it('is silent about stretches of 15 s or less', () => {
    // Four eights at 184 beats a minute last 10.4 s.
    const short = withPush({ resistance: { kind: 'total', from: 2, to: 2 }, length: { counts: 32 } })
    expect(differences(computeRide(short))).toEqual([])
  })

  it('on any ride closes what it says it closes, and never makes a worse one of its kind', () => {
    let applied = 0
    fc.assert(
      fc.property(arbitraryRide({ sections: 3, items: 6 }), (ride) => {
        const before = computeRide(ride)
        for (const found of differences(before)) {
          for (const { label, command } of found.fixes) {
            const after = differences(computeRide(command.apply(ride)))
            const same = after.find(({ blockId }) => blockId === found.blockId)
            applied++
            const promises = /^(Add|Take) /.test(told(label)) && /; (add|take) [^;]*\.$/.test(told(found.text))
            if (promises) expect(same).toBeUndefined()
            expect(same?.amount ?? 0).toBeLessThan(found.amount!)
            for (const other of after) {
              if (other.blockId === found.blockId) continue
              const known = differences(before).find(({ id }) => id === other.id)
              expect(known).toBeDefined()
              expect(other.amount!).toBeLessThanOrEqual(known!.amount! + 1e-9)
            }
          }
        }
      }),
      { numRuns: 80 },
    )
    expect(applied).toBeGreaterThan(40)
  })

  it('never leaves a difference without a way out or a reason', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 2, items: 6 }), (ride) => {
        for (const { text, proposed } of differences(computeRide(ride))) {
          const steps = proposed.some(({ label }) => /^(Add|Take) /.test(told(label)))
          expect(
            steps ||
              /build on each other|the knob|above base|over base|in one call|they should be at|calibrated|coarse|the next step|no single change/.test(
                told(text),
              ),
          ).toBe(true)
        }
      }),
      { numRuns: 80 },
    )
  })
})
