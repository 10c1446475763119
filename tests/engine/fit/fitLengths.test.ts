import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type FitItem, fitLengths } from '#engine/fit/fitLengths.ts'
import { costOf, greedyFit } from '#tests/support/reference/greedyFit.ts'

const item = (drafted: number, rounds = 1, least = 1, most = 40, weight = 1): FitItem => ({ drafted, rounds, least, most, weight })

/** Every choice of lengths, judged by the same rule. */
function bruteForce(items: readonly FitItem[], total: number): { lengths: number[]; cost: number } | null {
  let best: { lengths: number[]; cost: number } | null = null
  const choose = (lengths: number[], rest: number): void => {
    const next = items[lengths.length]
    if (next === undefined) {
      if (rest !== 0) return
      const cost = items.reduce((sum, one, i) => sum + costOf(one, lengths[i]!), 0)
      if (best === null || isBetter(items, { lengths, cost }, best)) best = { lengths: [...lengths], cost }
      return
    }
    for (let n = next.least; n <= next.most && n * next.rounds <= rest; n++)
      if (n % (next.step ?? 1) === 0) choose([...lengths, n], rest - n * next.rounds)
  }
  choose([], total)
  return best
}

function isBetter(items: readonly FitItem[], a: { lengths: number[]; cost: number }, b: { lengths: number[]; cost: number }): boolean {
  if (Math.abs(a.cost - b.cost) > 1e-9 * Math.max(1, a.cost)) return a.cost < b.cost
  const changes = (lengths: number[]) => lengths.map((n, i) => n !== items[i]!.drafted)
  const [mine, theirs] = [changes(a.lengths), changes(b.lengths)]
  const count = (flags: boolean[]) => flags.filter(Boolean).length
  if (count(mine) !== count(theirs)) return count(mine) < count(theirs)
  for (const [i, flag] of mine.entries()) if (flag !== theirs[i]) return flag
  for (const [i, n] of a.lengths.entries()) if (n !== b.lengths[i]) return n < b.lengths[i]!
  return false
}

const arbitraryItem = (rounds: fc.Arbitrary<number>): fc.Arbitrary<FitItem> =>
  fc
    .record({
      drafted: fc.oneof(
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 2, max: 32 }).map((quarters) => quarters / 4),
      ),
      rounds,
      bounds: fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 0, max: 5 })),
      weight: fc.constantFrom(1, 1, 2, 0.5),
    })
    .map(({ drafted, rounds: times, bounds: [least, more], weight }) => ({ drafted, rounds: times, least, most: least + more, weight }))

describe('whole lengths that fill a song', () => {
  it('is the optimum where the greedy is not: 18 eights, drafted 4 and 5, played once and three times', () => {
    const items = [item(4, 1), item(5, 3)]
    const found = fitLengths(items, 18)
    expect(found).toEqual({ ok: true, fitted: { lengths: [3, 5], cost: 0.0625 } })
    expect(greedyFit(items, 18)).toMatchObject({ lengths: [6, 4] })
    expect(greedyFit(items, 18)!.cost).toBeCloseTo(0.29, 10)
  })

  it('changes nothing where the song is as long as the plan', () => {
    expect(fitLengths([item(8), item(4, 2), item(2)], 18)).toEqual({ ok: true, fitted: { lengths: [8, 4, 2], cost: 0 } })
  })

  it('takes from the longest, and of equal ones changes the earliest', () => {
    expect(fitLengths([item(4), item(16), item(4)], 22)).toMatchObject({ fitted: { lengths: [4, 14, 4] } })
    expect(fitLengths([item(8), item(8), item(8)], 23)).toMatchObject({ fitted: { lengths: [7, 8, 8] } })
    expect(fitLengths([item(8), item(8), item(8)], 25)).toMatchObject({ fitted: { lengths: [9, 8, 8] } })
  })

  it('names the nearest totals where one cannot be reached', () => {
    expect(fitLengths([item(4, 3, 1, 10)], 10)).toEqual({ ok: false, nearest: { below: 9, above: 12 } })
    expect(fitLengths([item(4, 1, 4, 4)], 9)).toEqual({ ok: false, nearest: { below: 4, above: null } })
    expect(fitLengths([item(4, 1, 4, 4), item(2, 1, 2, 3)], 3)).toEqual({ ok: false, nearest: { below: null, above: 6 } })
  })

  for (const [name, rounds] of [
    ['without sets', fc.constant(1)],
    ['with sets', fc.integer({ min: 1, max: 4 })],
  ] as const) {
    it(`equals trying everything, ${name}`, () => {
      fc.assert(
        fc.property(fc.array(arbitraryItem(rounds), { minLength: 1, maxLength: 5 }), fc.integer({ min: 0, max: 40 }), (items, total) => {
          const found = fitLengths(items, total)
          const best = bruteForce(items, total)
          if (best === null) {
            expect(found.ok).toBe(false)
            return
          }
          expect(found).toMatchObject({ ok: true, fitted: { lengths: best.lengths } })
        }),
        { numRuns: 3000 },
      )
    })
  }

  it('costs what the greedy costs where every block is played once', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryItem(fc.constant(1)), { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 1, max: 90 }),
        (items, total) => {
          const found = fitLengths(items, total)
          const greedy = greedyFit(items, total)
          expect(found.ok).toBe(greedy !== null)
          if (found.ok) expect(found.fitted.cost).toBeCloseTo(greedy!.cost, 9)
        },
      ),
      { numRuns: 1000 },
    )
  })

  it('names nearest totals that can be reached, and none nearer can', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryItem(fc.integer({ min: 1, max: 4 })), { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 60 }),
        (items, total) => {
          const found = fitLengths(items, total)
          if (found.ok) return
          const { below, above } = found.nearest
          for (const near of [below, above]) if (near !== null) expect(fitLengths(items, near).ok).toBe(true)
          const reachable = (t: number) => fitLengths(items, t).ok
          for (let t = (below ?? -1) + 1; t < (above ?? total + 1); t++) expect(reachable(t)).toBe(false)
        },
      ),
      { numRuns: 400 },
    )
  })
})
