import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { shiftTotals } from '#plan/commands/shiftTotals.ts'
import type { Resistance, Ride } from '#plan/model.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const total = (steps: number): Resistance => ({ kind: 'total', from: steps, to: steps })
const add = (steps: number): Resistance => ({ kind: 'change', mode: 'exact', steps })

function rideOf(...calls: Resistance[]): Ride {
  const blocks = calls.map((resistance, index) => aBlock(`b${index}`, { resistance }))
  return { ...smallRide(), sections: [aSection('song', { song: aSong('first'), blocks })] }
}
const totalsOf = (ride: Ride) => computeRide(ride).blocks.map(({ ledger }) => ledger.after.nominal)
const shifted = (ride: Ride, ids: string[], steps: number) => shiftTotals(ride, { blockIds: ids, steps }).apply(ride)

describe('shifting totals', () => {
  it('moves every chosen total once, whatever the call', () => {
    const ride = rideOf(total(2), add(2), { kind: 'keep' }, total(8), add(-4))
    expect(totalsOf(ride)).toEqual([2, 4, 4, 8, 4])
    expect(totalsOf(shifted(ride, ['b1', 'b2', 'b3', 'b4'], 1))).toEqual([2, 5, 5, 9, 5])
  })

  it('is carried on by what has no total of its own', () => {
    const ride = rideOf(total(2), add(2), { kind: 'keep' }, total(8), add(-4))
    expect(totalsOf(shifted(ride, ['b1'], -1))).toEqual([2, 3, 3, 8, 4])
  })

  it('starts anew after a total that was not chosen', () => {
    const ride = rideOf(total(4), total(6), add(2))
    expect(totalsOf(shifted(ride, ['b0', 'b2'], 2))).toEqual([6, 6, 10])
  })

  it('turns a change that comes to nothing into a stay, and keeps checkpoints true', () => {
    const ride = rideOf(total(4), add(-2), { ...add(3), checkpoint: { from: 4, to: 6 } } as Resistance)
    const next = shifted(ride, ['b1', 'b2'], 2)
    expect(next.sections[0]!.blocks[1]).toMatchObject({ resistance: { kind: 'keep' } })
    expect(next.sections[0]!.blocks[2]).toMatchObject({ resistance: { steps: 3, checkpoint: { from: 6, to: 8 } } })
  })

  it('never adds round by round inside a set', () => {
    const set = aSet('set', [
      aBlock('p', { resistance: add(4) }),
      aBlock('q', { resistance: add(-4) }),
      aBlock('r', { resistance: total(6) }),
    ])
    const ride = { ...smallRide(), sections: [aSection('song', { song: aSong('first'), blocks: [set] })] }
    const next = shifted(ride, ['p', 'q', 'r'], 1)
    expect(totalsOf(ride)).toEqual([4, 0, 6, 10, 6, 6, 10, 6, 6])
    expect(totalsOf(next)).toEqual([4, 0, 7, 11, 7, 7, 11, 7, 7])
  })

  it('leaves the ride alone for nothing', () => {
    const ride = rideOf(total(2))
    expect(shifted(ride, ['b0'], 0)).toBe(ride)
    expect(shifted(ride, ['unknown'], 2)).toBe(ride)
  })

  it('says which way', () => {
    const ride = rideOf(total(2))
    expect(told(shiftTotals(ride, { blockIds: ['b0'], steps: -1 }).label)).toBe('Lowered the resistance of b0')
  })
})
