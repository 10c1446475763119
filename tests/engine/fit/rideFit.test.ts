import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { cheapestSum } from '#engine/fit/cheapestSum.ts'
import { fitRide } from '#engine/fit/rideFit.ts'
import { fitSection } from '#engine/fit/sectionFit.ts'
import type { Block, Ride, SetBlock } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { told } from '#tests/support/told.ts'

const withSlot = (ride: Ride, slotMinutes: number): Ride => ({ ...ride, slotMinutes })

describe('fitting a section to its song', () => {
  const ride = demoRide('spark')

  it('fills a song that was swapped for a shorter one, with the least change', () => {
    const shorter = {
      ...ride,
      sections: ride.sections.map((section) => (section.id === 's4' ? { ...section, outCount: 76 * 8 } : section)),
    }
    const fit = fitSection(shorter, 's4')
    expect(fit.ok).toBe(true)
    if (!fit.ok) return
    // 84 drafted eights into 76: mostly the long recoveries give, the pushes keep their eight.
    expect(fit.changes.map(({ name, from, to }) => [name, from / 8, to / 8])).toEqual([
      ['set-up', 8, 7],
      ['recover', 16, 14],
      ['recover', 16, 14],
      ['recover', 20, 17],
    ])
    const { sections } = computeRide(fit.command.apply(shorter))
    expect(sections[3]).toMatchObject({ open: 0, beyond: 0 })
  })

  it('costs a set an eight a round', () => {
    const set: SetBlock = { id: 'set', rounds: 3, parts: [(ride.sections[3]!.blocks[1] as Block)!, ride.sections[3]!.blocks[2] as Block] }
    const blocks = [ride.sections[3]!.blocks[0]!, set]
    const sections = ride.sections.map((section) => (section.id === 's4' ? { ...section, blocks } : section))
    const fit = fitSection({ ...ride, sections }, 's4')
    expect(fit).toMatchObject({ ok: true, leftOver: 0 })
    if (!fit.ok) return
    const after = computeRide(fit.command.apply({ ...ride, sections })).sections[3]!
    expect([after.open, after.beyond]).toEqual([0, 0])
  })

  it('leaves locked blocks and all-out efforts alone and says so when nothing can give', () => {
    const locked = ride.sections.map((section) => ({
      ...section,
      outCount: 40 * 8,
      blocks: (section.blocks as Block[]).map((block, i) => ({ ...block, ...(i % 2 ? { locked: true } : { allOut: true }) })),
    }))
    const fit = fitSection({ ...ride, sections: locked }, 's4')
    expect(fit.ok ? null : told(fit.reason)).toBe('Every block keeps its length, so nothing can give.')
  })

  it('on any ride fills the song exactly or names what is nearest', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 2, items: 4 }), (any) => {
        for (const { id } of any.sections) {
          const fit = fitSection(any, id)
          if (!fit.ok) {
            expect(told(fit.reason)).toMatch(/\.$/)
            continue
          }
          const after = computeRide(fit.command.apply(any)).sections.find(({ sectionId }) => sectionId === id)!
          expect(after.open).toBeCloseTo(fit.leftOver, 6)
          expect(after.beyond).toBe(0)
        }
      }),
      { numRuns: 150 },
    )
  })
})

describe('fitting a ride to its slot', () => {
  it('leaves a ride that ends inside alone', () => {
    const fit = fitRide(withSlot(demoRide('ridge'), 43.75))
    expect(fit).toMatchObject({ ok: true, trims: [] })
  })

  it('trims at phrase ends, never over and at most 20 s under', () => {
    for (const [name, minutes] of [
      ['ridge', 43],
      ['ridge', 40],
      ['ridge', 36],
      ['spark', 19],
      ['spark', 16.5],
    ] as const) {
      const ride = withSlot(demoRide(name), minutes)
      const fit = fitRide(ride)
      expect(fit.ok).toBe(true)
      if (!fit.ok) continue
      const after = computeRide(fit.command.apply(ride))
      expect(after.overall.slack).toBeGreaterThanOrEqual(0)
      expect(after.overall.slack).toBeLessThanOrEqual(20)
      expect(after.overall.total).toBeCloseTo(fit.total, 9)
      for (const { to, sectionId } of fit.trims) {
        expect(to % 32).toBe(0)
        expect(after.sections.find((section) => section.sectionId === sectionId)).toMatchObject({ open: 0, beyond: 0 })
      }
    }
  })

  it('plays songs on where they were cut short', () => {
    const ride = demoRide('spark')
    const cut = fitRide(withSlot(ride, 17))
    if (!cut.ok) throw new Error(told(cut.reason))
    const back = fitRide(withSlot(cut.command.apply(withSlot(ride, 17)), 19.5))
    expect(back.ok).toBe(true)
    if (back.ok) expect(back.trims.every(({ from, to }) => to > from)).toBe(true)
  })

  it('gives the nearest with the reason where the songs cannot be cut so far', () => {
    const fit = fitRide(withSlot(demoRide('spark'), 4))
    expect(fit.ok).toBe(false)
    if (fit.ok) return
    expect(told(fit.reason)).toMatch(/nearest is .* over|no choice/)
    expect(fit.nearest.length).toBeGreaterThan(0)
  })
})

describe('the cheapest sum inside bounds', () => {
  const choice = fc.record({
    seconds: fc.integer({ min: -4000, max: 0 }).map((n) => n / 100),
    cost: fc.integer({ min: 1, max: 50 }).map((n) => n / 10),
  })

  it('equals trying every combination', () => {
    const sections = fc.array(
      fc.array(choice, { maxLength: 4 }).map((ways) => [{ seconds: 0, cost: 0 }, ...ways]),
      { minLength: 1, maxLength: 5 },
    )
    fc.assert(
      fc.property(sections, fc.integer({ min: -80, max: 0 }), (ways, high) => {
        const low = high - 5
        let best = Number.POSITIVE_INFINITY
        const visit = (i: number, seconds: number, cost: number): void => {
          if (i === ways.length) {
            if (seconds >= low - 1e-9 && seconds <= high + 1e-9) best = Math.min(best, cost)
            return
          }
          for (const way of ways[i]!) visit(i + 1, seconds + way.seconds, cost + way.cost)
        }
        visit(0, 0, 0)
        const { inside } = cheapestSum(ways, low - 1e-9, high + 1e-9)
        if (best === Number.POSITIVE_INFINITY) expect(inside).toBeNull()
        else expect(inside!.cost).toBeCloseTo(best, 9)
      }),
      { numRuns: 1000 },
    )
  })
})
