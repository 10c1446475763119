import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { applyCall } from '#engine/ledger/applyCall.ts'
import { limitsOf } from '#engine/ledger/limits.ts'
import type { Resistance, Ride } from '#plan/model.ts'
import { arbitraryResistance, arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSet, inSeconds, smallRide } from '#tests/support/smallRide.ts'

/** Quarter turns; the knob is as in the tests of the trade's own arithmetic: loose wheel, twenty turns. */
const M = 80
const turns = (value: number): number => value * 4
const exact = (value: number): Resistance => ({ kind: 'change', mode: 'exact', steps: turns(value) })
const atLeast = (value: number): Resistance => ({ kind: 'change', mode: 'atLeast', steps: turns(value) })
const ifYouHaveIt = (value: number): Resistance => ({ kind: 'change', mode: 'ifYouHaveIt', steps: turns(value) })
const to = (from: number, upTo = from): Resistance => ({ kind: 'total', from: turns(from), to: turns(upTo) })

function rideOf(calls: Resistance[], datum: Ride['datum'] = 'loose'): Ride {
  const blocks = calls.map((resistance, i) => aBlock(`b${i}`, { ...inSeconds(60), resistance, cadence: { rpm: 80 } }))
  return { ...smallRide(), datum, sections: [aSection('s', { blocks })] }
}

const ledgerOf = (calls: Resistance[], datum: Ride['datum'] = 'loose') =>
  computeRide(rideOf(calls, datum)).blocks.map(({ ledger }) => ledger)
const lastOf = (calls: Resistance[]) => {
  const { low, nominal, high } = ledgerOf(calls).at(-1)!.after
  return [low / 4, nominal / 4, high / 4]
}

// Arithmetic of the calls as instructors make them (common practice).
describe('known answers', () => {
  const start = [to(2), exact(0.25), exact(0.5), atLeast(1.5)]
  const spread = [...start, ifYouHaveIt(0.5)]
  const eased = [...spread, exact(-1.25)]

  it.each([
    ['2, +¼, +½, at least 1½', start, [4.25, 4.25, M / 4]],
    ['½ if you have it', spread, [4.25, 4.75, M / 4]],
    ['−1¼', eased, [3, 3.5, M / 4 - 1.25]],
    ['to 3–4', [...eased, to(3, 4)], [3, 3.5, 4]],
  ])('%s', (_, calls, state) => {
    expect(lastOf(calls)).toEqual(state)
  })

  it('a checkpoint of 5–6 there is missed by 1½, and the repair lands inside', () => {
    const ride = rideOf([...eased, to(3, 4), { kind: 'change', mode: 'exact', steps: 0, checkpoint: { from: turns(5), to: turns(6) } }])
    const finding = computeRide(ride).findings.find(({ rule }) => rule === 'checkpointMissed')!
    expect(finding.text).toContain('5–6')
    expect(finding.text).toContain('3–4')
    expect(finding.text).toContain('+1½')
    const repaired = finding.fixes[0]!.command.apply(ride)
    expect(computeRide(repaired).blocks.at(-1)!.ledger.after.nominal).toBe(turns(5))
    expect(repaired.sections[0]!.blocks.at(-1)).toMatchObject({ resistance: { steps: 6 } })
  })
})

describe('a call', () => {
  const limits = { floor: 0, ceiling: M, base: 8 }
  const state = { low: 4, nominal: 8, high: 20 }

  it('takes the mirror of "at least" and "if you have it" when it takes off', () => {
    expect(applyCall(state, { kind: 'change', mode: 'atLeast', steps: -2 }, limits).after).toEqual({ low: 0, nominal: 6, high: 18 })
    expect(applyCall(state, { kind: 'change', mode: 'ifYouHaveIt', steps: -2 }, limits).after).toEqual({ low: 2, nominal: 6, high: 20 })
  })

  it('holds the nominal value inside a range, or puts it at the stated aim', () => {
    expect(applyCall(state, { kind: 'total', from: 10, to: 12 }, limits).after).toEqual({ low: 10, nominal: 10, high: 12 })
    expect(applyCall(state, { kind: 'byFeel', from: 2, to: 6 }, limits).after).toEqual({ low: 2, nominal: 6, high: 6 })
    expect(applyCall(state, { kind: 'total', from: 2, to: 12, aim: 11 }, limits).after).toEqual({ low: 2, nominal: 11, high: 12 })
  })

  it('lets the highest rider meet the end of the knob silently, and no other', () => {
    const near = { low: 70, nominal: 74, high: 78 }
    expect(applyCall(near, { kind: 'change', mode: 'exact', steps: 4 }, limits)).toEqual({
      after: { low: 74, nominal: 78, high: M },
      under: 0,
      over: 0,
    })
    expect(applyCall(near, { kind: 'change', mode: 'exact', steps: 8 }, limits)).toEqual({
      after: { low: 78, nominal: M, high: M },
      under: 0,
      over: 2,
    })
    expect(applyCall(state, { kind: 'change', mode: 'exact', steps: -6 }, limits)).toEqual({
      after: { low: 0, nominal: 2, high: 14 },
      under: 2,
      over: 0,
    })
  })

  it('takes all of it off down to the loosest setting, wherever the ride counts from', () => {
    const base = limitsOf(rideOf([], 'base'))
    expect(base).toEqual({ floor: -8, ceiling: 72, base: 0 })
    expect(applyCall({ low: 0, nominal: 0, high: 0 }, { kind: 'allOff' }, base).after).toEqual({ low: -8, nominal: -8, high: -8 })
  })

  it('starts a scale without zero at its loosest setting', () => {
    const wheel = { ...smallRide().bike, unit: 'level', stepsPerUnit: 1, min: 1, max: 24, base: 5 }
    const ride = { ...rideOf([{ kind: 'keep' }]), bike: wheel }
    expect(computeRide(ride).blocks[0]!.ledger.after.nominal).toBe(1)
  })

  it('keeps low ≤ nominal ≤ high in whole steps on the knob, whatever the calls', () => {
    fc.assert(
      fc.property(fc.array(arbitraryResistance, { maxLength: 30 }), fc.constantFrom('base' as const, 'loose' as const), (calls, datum) => {
        const { floor, ceiling } = limitsOf(rideOf([], datum))
        for (const { after } of ledgerOf(calls, datum)) {
          for (const value of [after.low, after.nominal, after.high]) expect(Number.isInteger(value)).toBe(true)
          expect(after.low).toBeLessThanOrEqual(after.nominal)
          expect(after.nominal).toBeLessThanOrEqual(after.high)
          expect(after.low).toBeGreaterThanOrEqual(floor)
          expect(after.high).toBeLessThanOrEqual(ceiling)
        }
      }),
    )
  })

  it('carries on from the one before in any ride', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const { blocks, totals } = computeRide(ride)
        for (const [i, { ledger }] of blocks.entries()) if (i > 0) expect(ledger.before).toEqual(blocks[i - 1]!.ledger.after)
        if (blocks.length > 0) expect(totals.endsAt).toEqual(blocks.at(-1)!.ledger.after)
      }),
    )
  })
})

describe('rounds that add', () => {
  const totals = (parts: Resistance[], rounds: number, steps: number) => {
    const blocks = parts.map((resistance, i) => aBlock(`p${i}`, { ...inSeconds(30), resistance }))
    const section = aSection('s', {
      blocks: [aBlock('start', { ...inSeconds(30), resistance: to(2) }), aSet('set', blocks, { rounds, perRound: { steps } })],
    })
    return computeRide({ ...smallRide(), datum: 'loose', sections: [section] })
      .blocks.slice(1)
      .map(({ ledger }) => ledger.after.nominal / 4)
  }

  it('lift every total', () => {
    expect(totals([to(4), to(2)], 3, 1)).toEqual([4, 2, 4.25, 2.25, 4.5, 2.5])
  })

  it('lift changes once a round', () => {
    expect(totals([exact(1), exact(-1)], 3, 1)).toEqual([3, 2, 3.25, 2.25, 3.5, 2.5])
    expect(totals([exact(1), to(2)], 3, 2)).toEqual([3, 2, 3.5, 2.5, 4, 3])
    expect(totals([{ kind: 'keep' }, exact(1), exact(-1)], 2, 1)).toEqual([2, 3, 2, 2, 3.25, 2.25])
  })

  it('start again from all off', () => {
    expect(totals([{ kind: 'allOff' }, exact(2)], 3, 1)).toEqual([0, 2, 0, 2.25, 0, 2.5])
  })
})

describe('reordering', () => {
  it('keeps stated totals and re-words them; keeps changes and re-totals them', () => {
    expect(ledgerOf([to(2), to(3.25), to(2.5)]).map(({ call, total }) => [call, total])).toEqual([
      ['two turns on', '2'],
      ['one and a quarter on', '3¼'],
      ['three quarters off', '2½'],
    ])
    expect(ledgerOf([to(2.5), to(3.25), to(2)]).map(({ call, total }) => [call, total])).toEqual([
      ['two and a half on', '2½'],
      ['three quarters on', '3¼'],
      ['one and a quarter off', '2'],
    ])
    expect(ledgerOf([exact(2), exact(1), exact(-0.5)]).map(({ total }) => total)).toEqual(['2', '3', '2½'])
    expect(ledgerOf([exact(1), exact(-0.5), exact(2)]).map(({ total }) => total)).toEqual(['1', '½', '2½'])
  })
})
