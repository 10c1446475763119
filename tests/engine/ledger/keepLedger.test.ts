import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { applyCall, checkpointOf } from '#plan/ledger/applyCall.ts'
import { atTotal, type LedgerState, mayBeAt } from '#plan/ledger/ledgerState.ts'
import { type Limits, limitsOf } from '#plan/ledger/limits.ts'
import type { Resistance, Ride } from '#plan/model.ts'
import { arbitraryResistance, arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSet, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

/** Quarter turns; the knob is as in the tests of the trade's own arithmetic: loose wheel, twenty turns. */
const M = 80
const turns = (value: number): number => value * 4
const exact = (value: number): Resistance => ({ kind: 'change', mode: 'exact', steps: turns(value) })
const atLeast = (value: number): Resistance => ({ kind: 'change', mode: 'atLeast', steps: turns(value) })
const ifYouHaveIt = (value: number): Resistance => ({ kind: 'change', mode: 'ifYouHaveIt', steps: turns(value) })
const to = (from: number, upTo = from): Resistance => ({ kind: 'total', from: turns(from), to: turns(upTo) })
const toAtLeast = (from: number): Resistance => ({ kind: 'total', from: turns(from), to: turns(from), orMore: true })
const beAt = (from: number, upTo: number, call: Resistance = { kind: 'keep' }): Resistance =>
  ({ ...call, checkpoint: { from: turns(from), to: turns(upTo) } }) as Resistance

function rideOf(calls: Resistance[], datum: Ride['datum'] = 'loose'): Ride {
  const blocks = calls.map((resistance, i) => aBlock(`b${i}`, { ...inSeconds(60), resistance, cadence: { rpm: 80 } }))
  return { ...smallRide(), datum, sections: [aSection('s', { blocks })] }
}

const ledgerOf = (calls: Resistance[], datum: Ride['datum'] = 'loose') =>
  computeRide(rideOf(calls, datum)).blocks.map(({ ledger }) => ledger)
const lastOf = (calls: Resistance[]) => {
  const { low, nominal, high } = ledgerOf(calls).at(-1)!.after
  return [low === null ? null : low / 4, nominal / 4, high === null ? null : high / 4]
}

// Arithmetic of the calls as instructors make them (common practice).
describe('known answers', () => {
  const start = [to(2), exact(0.25), exact(0.5), atLeast(1.5)]
  const spread = [...start, ifYouHaveIt(0.5)]
  const eased = [...spread, exact(-1.25)]

  it.each([
    ['2, +¼, +½, at least 1½', start, [4.25, 4.25, null]],
    ['½ if you have it', spread, [4.25, 4.75, null]],
    ['−1¼', eased, [3, 3.5, null]],
    ['to 3–4', [...eased, to(3, 4)], [3, 3.5, 4]],
    ['where riders may be at 4¼ or more, a checkpoint 4–6', [...spread, beAt(4, 6)], [4.25, 4.75, 6]],
    ['"at least 3" as a total', [to(2), toAtLeast(3)], [3, 3, null]],
    ['an open end goes on under +x and −x', [...spread, exact(1), exact(-2.5)], [2.75, 3.25, null]],
    ['and is closed by a total', [...spread, to(5)], [5, 5, 5]],
    ['and by all off', [...spread, { kind: 'allOff' } as const], [0, 0, 0]],
  ])('%s', (_, calls, state) => {
    expect(lastOf(calls)).toEqual(state)
  })

  it('says an open end without a number, before and after it moves', () => {
    expect(ledgerOf([to(2), atLeast(5), exact(-2)]).map(({ total }) => total)).toEqual(['2', '7 or more', '5 or more'])
    expect(ledgerOf([to(7), atLeast(-2), exact(-1), exact(2)]).map(({ total }) => total)).toEqual([
      '7',
      '5 or less',
      '4 or less',
      '6 or less',
    ])
    expect(ledgerOf([to(3), atLeast(1), atLeast(-2)]).at(-1)!.total).toBe('2 or so')
    expect(ledgerOf([to(3), toAtLeast(3), beAt(3, 4), atLeast(1)]).map(({ total }) => total)).toEqual([
      '3',
      '3 or more',
      '3–4',
      '4 or more',
    ])
  })

  it('survives JSON and a structured clone with an open end', () => {
    const { after } = ledgerOf([to(2), atLeast(1)]).at(-1)!
    expect(JSON.parse(JSON.stringify(after))).toEqual({ low: 12, nominal: 12, high: null })
    expect(structuredClone(after)).toEqual(after)
  })

  it('a checkpoint of 5–6 there is missed by 1½, and the repair lands inside', () => {
    const ride = rideOf([...eased, to(3, 4), { kind: 'change', mode: 'exact', steps: 0, checkpoint: { from: turns(5), to: turns(6) } }])
    const finding = computeRide(ride).findings.find(({ rule }) => rule === 'checkpointMissed')!
    expect(told(finding.text)).toContain('5–6')
    expect(told(finding.text)).toContain('3–4')
    expect(told(finding.text)).toContain('+1½')
    const repaired = finding.fixes[0]!.command.apply(ride)
    expect(computeRide(repaired).blocks.at(-1)!.ledger.after.nominal).toBe(turns(5))
    expect(repaired.sections[0]!.blocks.at(-1)).toMatchObject({ resistance: { steps: 6 } })
  })
})

describe('a call', () => {
  const limits = { floor: 0, ceiling: M, base: 8 }
  const state = { low: 4, nominal: 8, high: 20 }

  it('takes the mirror of "at least" and "if you have it" when it takes off', () => {
    expect(applyCall(state, { kind: 'change', mode: 'atLeast', steps: -2 }, limits).after).toEqual({ low: null, nominal: 6, high: 18 })
    expect(applyCall(state, { kind: 'change', mode: 'ifYouHaveIt', steps: -2 }, limits).after).toEqual({ low: 2, nominal: 6, high: 20 })
  })

  it('holds the nominal value inside a range, or puts it at the stated aim', () => {
    expect(applyCall(state, { kind: 'total', from: 10, to: 12 }, limits).after).toEqual({ low: 10, nominal: 10, high: 12 })
    expect(applyCall(state, { kind: 'byFeel', from: 2, to: 6 }, limits).after).toEqual({ low: 2, nominal: 6, high: 6 })
    expect(applyCall(state, { kind: 'total', from: 2, to: 12, aim: 11 }, limits).after).toEqual({ low: 2, nominal: 11, high: 12 })
  })

  it('lets the highest rider meet the end of the knob silently, and no other', () => {
    const near = { low: 70, nominal: 74, high: 78 }
    expect(applyCall(near, { kind: 'change', mode: 'exact', steps: 4 }, limits)).toMatchObject({
      after: { low: 74, nominal: 78, high: M },
      under: 0,
      over: 0,
    })
    expect(applyCall(near, { kind: 'change', mode: 'exact', steps: 8 }, limits)).toMatchObject({
      after: { low: 78, nominal: M, high: M },
      under: 0,
      over: 2,
    })
    expect(applyCall(state, { kind: 'change', mode: 'exact', steps: -6 }, limits)).toMatchObject({
      after: { low: 0, nominal: 2, high: 14 },
      under: 2,
      over: 0,
    })
  })

  it('says that the nominal rider runs out of knob where the lowest one is not known', () => {
    const open = { low: null, nominal: 4, high: 6 }
    expect(applyCall(open, { kind: 'change', mode: 'exact', steps: -6 }, limits)).toMatchObject({
      after: { low: 0, nominal: 0, high: 0 },
      under: 2,
    })
    expect(applyCall(atTotal(4), { kind: 'change', mode: 'atLeast', steps: -6 }, limits).under).toBe(2)
  })

  it('has no open end where the knob ends', () => {
    expect(applyCall(atTotal(78), { kind: 'change', mode: 'atLeast', steps: 2 }, limits).after).toEqual(atTotal(M))
    expect(applyCall(atTotal(2), { kind: 'change', mode: 'atLeast', steps: -2 }, limits).after).toEqual(atTotal(0))
  })

  it('is narrowed to what it shares with a checkpoint; a missed one leaves riders where the calls lead', () => {
    const checked = (from: number, upTo: number, orMore?: true): Resistance => ({
      kind: 'keep',
      checkpoint: { from, to: upTo, ...(orMore && { orMore }) },
    })
    expect(applyCall(state, checked(10, 12), limits)).toEqual({
      after: { low: 10, nominal: 10, high: 12 },
      reached: state,
      under: 0,
      over: 0,
    })
    expect(applyCall(state, checked(6, 6, true), limits).after).toEqual({ low: 6, nominal: 8, high: 20 })
    expect(applyCall({ ...state, high: null }, checked(6, 6, true), limits).after).toEqual({ low: 6, nominal: 8, high: null })
    expect(applyCall({ ...state, low: null }, checked(-4, 6), limits).after).toEqual({ low: 0, nominal: 6, high: 6 })
    expect(applyCall(state, checked(21, 30), limits).after).toEqual(state)
    expect(applyCall({ ...state, high: null }, checked(90, 95), limits).after).toEqual({ ...state, high: null })
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
          const [low, high] = [after.low ?? floor, after.high ?? ceiling]
          for (const value of [low, after.nominal, high]) expect(Number.isInteger(value)).toBe(true)
          expect(low).toBeLessThanOrEqual(after.nominal)
          expect(after.nominal).toBeLessThanOrEqual(high)
          expect(low).toBeGreaterThanOrEqual(floor)
          expect(high).toBeLessThanOrEqual(ceiling)
        }
      }),
    )
  })

  it('carries on from the one before in any ride', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const { blocks, overall } = computeRide(ride)
        for (const [i, { ledger }] of blocks.entries()) if (i > 0) expect(ledger.before).toEqual(blocks[i - 1]!.ledger.after)
        if (blocks.length > 0) expect(overall.endsAt).toEqual(blocks.at(-1)!.ledger.after)
      }),
    )
  })
})

/** Every place a rider at a place may go who does what is said: any amount that is left open, no further than the knob. */
function placesAfter(place: number, call: Resistance, { floor, ceiling }: Limits): number[] {
  const onKnob = (steps: number) => Math.min(ceiling, Math.max(floor, steps))
  const between = (low: number, high: number) => Array.from({ length: onKnob(high) - onKnob(low) + 1 }, (_, i) => onKnob(low) + i)
  switch (call.kind) {
    case 'keep':
      return [place]
    case 'allOff':
      return [floor]
    case 'total':
    case 'byFeel':
      return between(call.from, call.orMore ? ceiling : call.to)
    case 'change': {
      const moved = place + call.steps
      if (call.mode === 'exact' || call.steps === 0) return [onKnob(moved)]
      const adds = call.steps > 0
      if (call.mode === 'ifYouHaveIt') return adds ? between(place, moved) : between(moved, place)
      return adds ? between(moved, ceiling) : between(floor, moved)
    }
  }
}

/** All riders after all calls, told where they should be wherever some are. */
function ridersAfter(calls: readonly Resistance[], start: number, limits: Limits): { riders: Set<number>; state: LedgerState }[] {
  let riders = new Set([start])
  let state = atTotal(start)
  return calls.map((call) => {
    riders = new Set([...riders].flatMap((place) => placesAfter(place, call, limits)))
    const checkpoint = checkpointOf(call)
    const { after, reached } = applyCall(state, call, limits)
    if (checkpoint && after !== reached) {
      const upper = Math.min(limits.ceiling, checkpoint.orMore ? limits.ceiling : checkpoint.to)
      riders = new Set([...riders].map((place) => Math.min(upper, Math.max(checkpoint.from, place))))
    }
    state = after
    return { riders, state }
  })
}

describe('range arithmetic against every rider who does what is said', () => {
  const limits = { floor: -3, ceiling: 9, base: 0 }
  const range = fc
    .tuple(fc.integer({ min: -4, max: 10 }), fc.integer({ min: 0, max: 4 }))
    .map(([from, width]) => ({ from, to: from + width }))
  const open = fc.integer({ min: -4, max: 10 }).map((from) => ({ from, to: from, orMore: true as const }))
  const checkpoint = fc.option(fc.oneof(range, open), { nil: undefined, freq: 2 })
  const mode = fc.constantFrom('exact' as const, 'atLeast' as const, 'ifYouHaveIt' as const)
  const change = fc.record({ kind: fc.constant('change' as const), mode, steps: fc.integer({ min: -4, max: 4 }), checkpoint })
  const call: fc.Arbitrary<Resistance> = fc.oneof(
    { weight: 4, arbitrary: change },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('keep' as const), checkpoint }) },
    {
      weight: 1,
      arbitrary: fc.tuple(fc.oneof(range, open), checkpoint).map(([at, check]) => ({ kind: 'total' as const, ...at, checkpoint: check })),
    },
    { weight: 1, arbitrary: fc.oneof(range, open).map((at) => ({ kind: 'byFeel' as const, ...at })) },
    { weight: 1, arbitrary: fc.constant({ kind: 'allOff' as const }) },
  )

  it('holds every one of them, whatever the calls', () => {
    fc.assert(
      fc.property(fc.array(call, { maxLength: 12 }), fc.integer({ min: -3, max: 9 }), (calls, start) => {
        for (const { riders, state } of ridersAfter(calls, start, limits))
          for (const place of riders) expect(mayBeAt(state, place), `${place} in ${JSON.stringify(state)}`).toBe(true)
      }),
      { numRuns: 400 },
    )
  })

  it('reaches no further than they do where no end is open', () => {
    const isClosed = (one: Resistance): boolean =>
      !('orMore' in one) && (one.kind !== 'change' || one.mode !== 'atLeast') && !checkpointOf(one)?.orMore
    fc.assert(
      fc.property(fc.array(call.filter(isClosed), { maxLength: 12 }), fc.integer({ min: -3, max: 9 }), (calls, start) => {
        for (const { riders, state } of ridersAfter(calls, start, limits)) {
          expect([state.low, state.high]).toEqual([Math.min(...riders), Math.max(...riders)])
          expect(riders.has(state.nominal)).toBe(true)
        }
      }),
      { numRuns: 400 },
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

  it('lift where riders should be with the total they are at', () => {
    const checked = (call: Resistance): Resistance => ({ ...call, checkpoint: { from: 8, to: 16 } }) as Resistance
    const section = (parts: Resistance[]) =>
      aSection('s', {
        blocks: [
          aSet(
            'set',
            parts.map((resistance, i) => aBlock(`p${i}`, { ...inSeconds(30), resistance })),
            { rounds: 2, perRound: { steps: 1 } },
          ),
        ],
      })
    const checks = (parts: Resistance[]) =>
      computeRide({ ...smallRide(), datum: 'loose', sections: [section(parts)] }).blocks.map(({ ledger }) => ledger.checkpoint?.from)
    expect(checks([checked({ kind: 'keep' }), checked(to(3)), checked(exact(1))])).toEqual([8, 8, 8, 8, 9, 9])
    expect(checks([checked(to(3)), checked({ kind: 'keep' })])).toEqual([8, 8, 9, 9])
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
