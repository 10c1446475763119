import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lengthsFor } from '#engine/fit/sectionFit.ts'
import type { Block, Move, Section } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSong } from '#tests/support/smallRide.ts'

const leans = (counts: number): Move => ({
  name: 'side lean',
  counts,
  side: 'left',
  // biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
  then: 'alternate',
})
const block = (id: string, counts: number, change: Partial<Block> = {}) => aBlock(id, { length: { counts }, ...change })
const section = (blocks: Block[], beatsPerBar: 3 | 4 = 4): Section =>
  aSection('s', { song: aSong('m', { grid: gridOfTempo(120, 0, beatsPerBar) }), blocks })
const lengthsOf = (fit: ReturnType<typeof lengthsFor>) => (fit.ok ? [...fit.lengths.values()] : null)

/** Every choice of whole eights for the blocks, of which those with a figure take only whole ones. */
function cheapest(drafted: readonly number[], figures: readonly (number | null)[], total: number, eight: number): number | null {
  const cost = (lengths: readonly number[]) => lengths.reduce((sum, n, i) => sum + ((n - drafted[i]!) / drafted[i]!) ** 2, 0)
  const all = drafted.reduce<number[][]>(
    (rows, _, i) =>
      rows.flatMap((row) =>
        Array.from({ length: total / eight }, (__, n) => (n + 1) * eight)
          .filter((length) => figures[i] === null || length % figures[i]! === 0)
          .map((length) => [...row, length]),
      ),
    [[]],
  )
  const fits = all.filter((row) => row.reduce((sum, n) => sum + n, 0) === total)
  return fits.length === 0 ? null : Math.min(...fits.map(cost))
}

describe('a move that goes from side to side', () => {
  it('keeps whole figures, at the least cost there is', () => {
    const one = fc.record({ eights: fc.integer({ min: 1, max: 12 }), side: fc.constantFrom(null, 4, 6, 8, 12, 16) })
    fc.assert(
      fc.property(
        fc.array(one, { minLength: 2, maxLength: 3 }),
        fc.integer({ min: 3, max: 22 }),
        fc.constantFrom(3 as const, 4 as const),
        (plan, eights, bar) => {
          const eight = bar === 3 ? 6 : 8
          const drafted = plan.map((each) => each.eights * eight)
          const figures = plan.map(({ side }, i) => (side !== null && drafted[i]! % (2 * side) === 0 ? 2 * side : null))
          const blocks = plan.map(({ side }, i) => block(`b${i}`, drafted[i]!, side === null ? {} : { move: leans(side) }))
          const fit = lengthsFor(section(blocks, bar), eights * eight)
          const best = cheapest(drafted, figures, eights * eight, eight)
          expect(fit.ok).toBe(best !== null)
          if (!fit.ok) return
          expect(fit.cost).toBeCloseTo(best!, 9)
          for (const [i, counts] of [...fit.lengths.values()].entries()) if (figures[i]) expect(counts % figures[i]!).toBe(0)
        },
      ),
      { numRuns: 150 },
    )
  })

  it('of 12 counts a side stays at 48 or goes to 72 counts, not to 56', () => {
    expect(lengthsOf(lengthsFor(section([block('a', 64), block('b', 48, { move: leans(12) })]), 120))).toEqual([72, 48])
    expect(lengthsOf(lengthsFor(section([block('a', 64), block('b', 48, { move: leans(12) })]), 160))).toEqual([88, 72])
  })

  it('counts a jump as up and down, on either foot', () => {
    const move: Move = { ...leans(4), name: 'jump' }
    expect(lengthsOf(lengthsFor(section([block('a', 64), block('b', 64, { move })]), 136))).toEqual([72, 64])
  })

  it('is free where its draft was none of whole figures, or its own bounds leave none', () => {
    expect(lengthsOf(lengthsFor(section([block('a', 64), block('b', 64, { move: leans(12) })]), 144))).toEqual([72, 72])
    const bounded = block('b', 48, { move: leans(12), minEights: 7, maxEights: 8 })
    expect(lengthsOf(lengthsFor(section([block('a', 64), bounded]), 120))).toEqual([64, 56])
  })
})
