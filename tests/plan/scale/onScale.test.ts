import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { setBike } from '#plan/commands/setBike.ts'
import { setDatum } from '#plan/commands/setDatum.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import { limitsOf, startOf } from '#plan/ledger/limits.ts'
import { playCall, standingAt } from '#plan/ledger/playCall.ts'
import { type Block, type Item, isSet, type Resistance, type Ride, type SetBlock } from '#plan/model.ts'
import { arbitraryResistance } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSet, inSeconds, smallRide } from '#tests/support/smallRide.ts'

/** A knob that ends nowhere near, so that only rounding is seen. */
const LONG = { ...DEFAULT_BIKE, max: 1_000, base: 200 }
const change = (steps: number, mode: 'exact' | 'atLeast' | 'ifYouHaveIt' = 'exact'): Resistance => ({ kind: 'change', mode, steps })
const total = (from: number, to = from): Resistance => ({ kind: 'total', from, to })
const KEEP: Resistance = { kind: 'keep' }

/** Calls one after another; a list of them is a set of so many rounds that adds so many steps. */
type Calls = (Resistance | { parts: Resistance[]; rounds: number; adds: number })[]

function rideOf(calls: Calls, change: Partial<Ride> = {}): Ride {
  const block = (id: string, resistance: Resistance): Block => aBlock(id, { ...inSeconds(30), resistance })
  const blocks = calls.map((one, i): Item => {
    if (!('parts' in one)) return block(`b${i}`, one)
    const parts = one.parts.map((call, part) => block(`b${i}p${part}`, call))
    return aSet(`b${i}`, parts, { rounds: one.rounds, perRound: { steps: one.adds } })
  })
  return { ...smallRide(), bike: LONG, datum: 'base', sections: [aSection('s', { blocks })], ...change }
}

/** Every call as it is played. */
function played(ride: Ride): ReturnType<typeof playCall>[] {
  const limits = limitsOf(ride)
  let standing = standingAt(startOf(limits))
  const calls: ReturnType<typeof playCall>[] = []
  const play = ({ resistance }: Block, set?: { set: SetBlock; round: number }) => {
    const one = playCall(standing, resistance, set, limits)
    standing = one.next
    calls.push(one)
  }
  for (const item of ride.sections.flatMap(({ blocks }) => blocks)) {
    if (!isSet(item)) play(item)
    else for (let round = 1; round <= item.rounds; round++) for (const part of item.parts) play(part, { set: item, round })
  }
  return calls
}

const onSteps = (ride: Ride, stepsPerUnit: number): Ride => setBike(ride, { ...ride.bike, name: 'another', stepsPerUnit }).apply(ride)

/** How far each nominal total is from what it was, in steps of the new scale. */
function errors(before: Ride, after: Ride): number[] {
  const share = after.bike.stepsPerUnit / before.bike.stepsPerUnit
  const now = played(after)
  return played(before).map((one, i) => Math.abs(now[i]!.after.nominal - one.after.nominal * share))
}

const HALF = 0.5 + 1e-9
const callsOf = (ride: Ride) =>
  ride.sections
    .flatMap(({ blocks }) => blocks)
    .map((item) => (isSet(item) ? item.parts.map(({ resistance }) => resistance) : item.resistance))
const isMissed = (ride: Ride) =>
  played(ride).some(({ call, after, reached }) => 'checkpoint' in call && call.checkpoint && after === reached)

const steps = fc.integer({ min: -4, max: 4 }).filter((value) => value !== 0)
const anyChange = fc.tuple(steps, fc.constantFrom('exact', 'atLeast', 'ifYouHaveIt')).map(([by, mode]) => change(by, mode as 'exact'))
const perUnit = fc.constantFrom(1, 2, 3, 5, 8)

describe('a ride on another scale', () => {
  it('ends no heavier than it was, however many changes lead there', () => {
    const calls = [...Array(9).fill(change(1)), ...Array(5).fill(change(-1)), ...Array(3).fill(change(1))]
    const coarse = onSteps(rideOf(calls), 2)
    expect(Math.max(...played(coarse).map(({ after }) => after.nominal)) / 2).toBe(2.5)
    expect(played(coarse).at(-1)!.after.nominal / 2).toBe(2)
    expect(errors(rideOf(calls), coarse).every((error) => error <= HALF)).toBe(true)
  })

  it('is within half a step of every total, whatever the calls', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(anyChange, arbitraryResistance), { maxLength: 20 }), perUnit, (calls, stepsPerUnit) => {
        const ride = rideOf(calls)
        const after = onSteps(ride, stepsPerUnit)
        fc.pre(!isMissed(ride) && !isMissed(after))
        for (const error of errors(ride, after)) expect(error).toBeLessThanOrEqual(HALF)
      }),
      { numRuns: 300 },
    )
  })

  it('is so in sets whose rounds are alike, with what comes before and after them', () => {
    const inner = fc.array(
      fc.oneof(
        steps.map((by) => change(by)),
        fc.integer({ min: 0, max: 12 }).map((at) => total(at)),
        fc.constant(KEEP),
      ),
      {
        minLength: 1,
        maxLength: 4,
      },
    )
    const plain = fc.array(
      steps.map((by) => change(by)),
      { maxLength: 3 },
    )
    fc.assert(
      fc.property(
        plain,
        fc.integer({ min: 0, max: 12 }),
        inner,
        fc.integer({ min: 2, max: 5 }),
        plain,
        perUnit,
        (before, at, parts, rounds, after, to) => {
          const ride = rideOf([...before, { parts: [total(at), ...parts], rounds, adds: 0 }, ...after])
          for (const error of errors(ride, onSteps(ride, to))) expect(error).toBeLessThanOrEqual(HALF)
        },
      ),
      { numRuns: 200 },
    )
  })

  it('puts the parts of any set at most one step further off than the best whole steps there are', () => {
    const call = fc.oneof(
      { weight: 3, arbitrary: steps.map((by) => change(by)) },
      { weight: 1, arbitrary: fc.integer({ min: 0, max: 12 }).map((at) => total(at)) },
      { weight: 1, arbitrary: fc.constantFrom(KEEP, { kind: 'allOff' } as const) },
    )
    const parts = fc.array(call, { minLength: 1, maxLength: 3 })
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 12 }),
        parts,
        fc.integer({ min: 2, max: 4 }),
        fc.integer({ min: -2, max: 2 }),
        fc.constantFrom(1, 2, 3),
        (...drawn) => {
          const [start, calls, rounds, adds, stepsPerUnit] = drawn
          const ride = rideOf([total(start), { parts: calls, rounds, adds }])
          const after = onSteps(ride, stepsPerUnit)
          const worst = Math.max(...errors(ride, after))
          if (worst > 1) expect(worst).toBeLessThanOrEqual(bestOf(ride, after) + 1 + 1e-9)
        },
      ),
      { numRuns: 60 },
    )
  })

  it('adds each round what it added, where its changes come to nothing', () => {
    const ride = rideOf([total(1), { parts: [change(1), change(-1)], rounds: 4, adds: 4 }])
    const after = onSteps(ride, 1)
    expect(callsOf(after)[1]).toEqual([change(1), change(-1)])
    const light = onSteps(rideOf([total(4), { parts: [change(1), change(-1)], rounds: 4, adds: 4 }]), 1)
    expect(callsOf(light)[1]).toEqual([change(0), change(0)])
    expect(played(light).map(({ after: { nominal } }) => nominal)).toEqual([1, 1, 1, 2, 2, 3, 3, 4, 4])
  })

  it('rounds ranges, aims, checkpoints and the leader’s own totals each by itself', () => {
    const ride = rideOf([
      { kind: 'total', from: 3, to: 9, aim: 5, checkpoint: { from: 5, to: 7 } },
      { kind: 'byFeel', from: 7, to: 7, orMore: true },
      { kind: 'keep', checkpoint: { from: 5, to: 5, orMore: true } },
    ])
    Object.assign(ride.sections[0]!.blocks, { 0: { ...(ride.sections[0]!.blocks[0] as Block), ownTotal: 7 } })
    const after = onSteps(ride, 2)
    expect(callsOf(after)).toEqual([
      { kind: 'total', from: 2, to: 5, aim: 3, checkpoint: { from: 3, to: 4 } },
      { kind: 'byFeel', from: 4, to: 4, orMore: true },
      { kind: 'keep', checkpoint: { from: 3, to: 3, orMore: true } },
    ])
    expect(after.sections[0]!.blocks[0]).toMatchObject({ ownTotal: 4 })
  })

  it('says "at least" and "if you have it" of the way they were said of', () => {
    const calls = [total(2), change(1, 'atLeast'), change(-1, 'ifYouHaveIt'), change(3, 'ifYouHaveIt')]
    expect(callsOf(onSteps(rideOf(calls), 1))).toEqual([total(1), KEEP, KEEP, KEEP])
    expect(callsOf(onSteps(rideOf(calls), 2))).toEqual([
      total(1),
      change(1, 'atLeast'),
      change(-1, 'ifYouHaveIt'),
      change(2, 'ifYouHaveIt'),
    ])
  })

  it('comes back as it was from a scale that has all its steps', () => {
    const items = fc.array(fc.oneof(anyChange, arbitraryResistance), { maxLength: 8 })
    fc.assert(
      fc.property(items, items, fc.integer({ min: 1, max: 4 }), fc.integer({ min: -2, max: 2 }), (calls, parts, rounds, adds) => {
        const ride = rideOf([...calls, ...(parts.length > 0 ? [{ parts, rounds, adds }] : []), ...calls])
        const fine = onSteps(ride, 12)
        expect(errors(ride, fine).every((error) => error === 0)).toBe(true)
        expect(setBike(fine, ride.bike).apply(fine)).toEqual(ride)
      }),
    )
  })

  it('knows that a checkpoint brings riders back from where the round before left them', () => {
    const parts: Resistance[] = [{ kind: 'keep', checkpoint: { from: 0, to: 0 } }, change(-4), { kind: 'allOff' }, change(4, 'atLeast')]
    const ride = rideOf([{ parts, rounds: 2, adds: 0 }])
    expect(callsOf(onSteps(ride, 2))).toEqual([
      [{ kind: 'keep', checkpoint: { from: 0, to: 0 } }, change(-2), { kind: 'allOff' }, change(2, 'atLeast')],
    ])
    expect(errors(ride, onSteps(ride, 2)).every((error) => error === 0)).toBe(true)
  })

  it('starts where riders start on a scale with another lowest setting', () => {
    const levels = { ...DEFAULT_BIKE, unit: 'level', stepsPerUnit: 1, min: 1, max: 24, base: 5 }
    const ride = rideOf([change(4), KEEP, change(-1)], { bike: levels, datum: 'loose' })
    const fromNought = setBike(ride, { ...levels, min: 0 }).apply(ride)
    expect(callsOf(fromNought)).toEqual([change(5), KEEP, change(-1)])
    expect(setBike(fromNought, levels).apply(fromNought)).toEqual(ride)
    const higher = { ...levels, max: 3, base: 2 }
    expect(setBike(ride, higher).apply(ride).sections).toBe(ride.sections)
  })
})

/** The furthest total of a set with the best whole steps near those it was given: all of them tried, brute force. */
function bestOf(before: Ride, after: Ride): number {
  const [first, item] = after.sections[0]!.blocks as [Block, SetBlock]
  const near = [-2, -1, 0, 1, 2]
  const moved = (call: Resistance, own: Resistance): Resistance[] => {
    if (own.kind === 'total' && call.kind === 'total') return near.map((by) => ({ ...call, from: call.from + by, to: call.to + by }))
    if (own.kind !== 'change') return [call]
    return near.map((by) => change((call.kind === 'change' ? call.steps : 0) + by))
  }
  const [, was] = before.sections[0]!.blocks as [Block, SetBlock]
  const choices = item.parts.map(({ resistance }, part) => moved(resistance, was.parts[part]!.resistance))
  const all = choices.reduce<Resistance[][]>((lists, one) => lists.flatMap((list) => one.map((call) => [...list, call])), [[]])
  let best = Number.POSITIVE_INFINITY
  for (const calls of all) {
    for (const adds of [-1, 0, 1]) {
      const parts = item.parts.map((part, index) => ({ ...part, resistance: calls[index]! }))
      const blocks = [first, { ...item, parts, perRound: { steps: (item.perRound?.steps ?? 0) + adds } }]
      best = Math.min(best, Math.max(...errors(before, { ...after, sections: [{ ...after.sections[0]!, blocks }] })))
    }
  }
  return best
}

describe('the same ride counted from elsewhere', () => {
  const BASE = DEFAULT_BIKE.base * DEFAULT_BIKE.stepsPerUnit
  const lifted = ({ low, nominal, high }: LedgerState, by: number) => [
    low === null ? null : low + by,
    nominal + by,
    high === null ? null : high + by,
  ]
  /** What opens the ride with a change in several rounds: no one call says both where it starts and how it goes on. */
  const opensInRounds = ({ sections: [section] }: Ride) => {
    const [first] = section!.blocks
    return first !== undefined && isSet(first) && first.rounds > 1 && ['keep', 'change'].includes(first.parts[0]!.resistance.kind)
  }

  it.each([
    ['a stay', [KEEP, change(2), KEEP], [change(8), change(2), KEEP]],
    ['a change', [change(2), KEEP], [change(10), KEEP]],
    ['rounds of changes that come back', [{ parts: [change(2), change(-2)], rounds: 3, adds: 0 }], [[total(10), change(-2)]]],
  ] as [string, Calls, unknown][])('stands where it stood, where it opens with %s', (_, calls, expected) => {
    const ride = rideOf(calls, { bike: DEFAULT_BIKE })
    const loose = setDatum('loose').apply(ride)
    expect(callsOf(loose)).toEqual(expected)
    expect(played(loose).map(({ after }) => lifted(after, 0))).toEqual(played(ride).map(({ after }) => lifted(after, BASE)))
  })

  it('stands where it stood in every call of any ride, and back again', () => {
    const calls = fc.array(fc.oneof(anyChange, arbitraryResistance), { minLength: 1, maxLength: 5 })
    const set = fc
      .tuple(calls, fc.integer({ min: 1, max: 4 }), fc.integer({ min: -2, max: 2 }))
      .map(([parts, rounds, adds]) => ({ parts, rounds, adds }))
    fc.assert(
      fc.property(fc.array(fc.oneof(anyChange, arbitraryResistance, set), { maxLength: 8 }), (items) => {
        const ride = rideOf(items, { bike: DEFAULT_BIKE })
        fc.pre(!opensInRounds(ride))
        const loose = setDatum('loose').apply(ride)
        const base = setDatum('base').apply(loose)
        const states = (of: Ride, by: number) => played(of).map(({ after }) => lifted(after, by))
        const totals = (of: Ride, by: number) => states(of, by).map(([, nominal]) => nominal)
        expect(totals(loose, 0)).toEqual(totals(ride, BASE))
        expect(totals(base, 0)).toEqual(totals(ride, 0))
        // No total says "or less", and one in a set says the same every round.
        const [first] = items
        if (first && ('parts' in first || (first.kind === 'change' && first.mode === 'atLeast' && first.steps < 0))) return
        expect(states(loose, 0)).toEqual(states(ride, BASE))
        expect(states(base, 0)).toEqual(states(ride, 0))
      }),
      { numRuns: 200 },
    )
  })
})
