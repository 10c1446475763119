import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { makeVariant } from '#engine/fit/makeVariant.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { revisionOf } from '#plan/document/revisionOf.ts'
import type { Item } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { told } from '#tests/support/told.ts'

describe('the same class in another length', () => {
  for (const [name, minutes] of [
    ['ridge', 60],
    ['ridge', 30],
    ['ridge', 20],
    ['spark', 30],
    ['spark', 45],
    ['spark', 60],
  ] as const) {
    it(`makes ${minutes} minutes of ${name}: ends inside, with warm-up, cool-down and finish`, () => {
      const parent = demoRide(name)
      const variant = makeVariant(parent, minutes, 'variant')
      if (!variant.ok) throw new Error(told(variant.reason))
      const { ride, changes } = variant
      expect(parseRide(structuredClone(ride)).ok).toBe(true)
      const report = computeRide(ride)
      expect(report.overall.slack).toBeGreaterThanOrEqual(-1e-6)
      expect(report.overall.slack).toBeLessThanOrEqual(20)
      expect(ride.parent).toEqual({ rideId: parent.id, revision: revisionOf(parent) })
      expect(ride.slotMinutes).toBe(minutes)

      const first = report.blocks.find(({ block }) => Math.max(block.effort.from, block.effort.to) >= 7)!
      const last = report.blocks.findLast(({ block }) => Math.max(block.effort.from, block.effort.to) > 3)!
      expect(first.from / report.overall.total).toBeGreaterThanOrEqual(0.12)
      expect((report.overall.total - last.to) / report.overall.total).toBeGreaterThanOrEqual(0.08)

      // The last song of the hardest peaks is still there, as the last of them.
      const peaks = computeRide(parent).recovery.bouts
      const finish = computeRide(parent).blocks[peaks.findLast(({ peak }) => peak === 9)!.fromBlock]!.sectionId
      expect(ride.sections.some(({ id }) => id === finish)).toBe(true)

      expect(changes[0]!.kind).toBe('slot')
      expect(told(changes[0]!.text)).toBe(`${minutes} minutes instead of ${parent.slotMinutes}.`)
      expect(changes.every(({ text }) => told(text).endsWith('.'))).toBe(true)
      for (const { sectionId } of report.sections) {
        expect(report.sections.find((section) => section.sectionId === sectionId)).toMatchObject({ open: 0, beyond: 0 })
      }
    })
  }

  it('lists every song that is gone, comes again or ends elsewhere', () => {
    const parent = demoRide('ridge')
    const variant = makeVariant(parent, 30, 'variant')
    if (!variant.ok) throw new Error(told(variant.reason))
    const kept = new Set(variant.ride.sections.map(({ id }) => id))
    const gone = parent.sections.filter(({ id }) => !kept.has(id)).map(({ id }) => id)
    expect(variant.changes.filter(({ kind }) => kind === 'dropped').map(({ sectionId }) => sectionId)).toEqual(gone)
    const cut = variant.ride.sections.filter(
      (section) => section.outCount !== parent.sections.find(({ id }) => id === section.id)?.outCount,
    )
    expect(
      variant.changes
        .filter(({ kind }) => kind === 'trimmed')
        .map(({ sectionId }) => sectionId)
        .sort(),
    ).toEqual(cut.map(({ id }) => id).sort())
  })

  it('keeps totals where the song before a told change is gone', () => {
    const parent = demoRide('ridge')
    const relative = {
      ...parent,
      sections: parent.sections.map((section) => ({
        ...section,
        blocks: section.blocks.map((block, i) =>
          i === 0 && section.id !== 's1' && !('parts' in block) ? { ...block, resistance: { kind: 'keep' as const } } : block,
        ),
      })),
    }
    const totals = (ride: typeof parent) => new Map(computeRide(ride).blocks.map(({ block, ledger }) => [block.id, ledger.after.nominal]))
    const variant = makeVariant(relative, 30, 'variant')
    if (!variant.ok) throw new Error(told(variant.reason))
    const before = totals(relative)
    for (const [id, total] of totals(variant.ride)) expect(total).toBe(before.get(id))
    expect(variant.changes.some(({ kind }) => kind === 'total')).toBe(true)
  })

  it('states an open total where riders came in with one, and keeps where they should be', () => {
    const parent = demoRide('ridge')
    const opened = {
      ...parent,
      sections: parent.sections.map((section) => ({
        ...section,
        blocks: section.blocks.map((block, i): Item => {
          if ('parts' in block) return block
          if (i === section.blocks.length - 1) return { ...block, resistance: { kind: 'change', mode: 'atLeast', steps: 1 } }
          if (i > 0 || section.id === 's1') return block
          return { ...block, resistance: { kind: 'keep', checkpoint: { from: -80, to: -80, orMore: true } } }
        }),
      })),
    }
    const variant = makeVariant(opened, 30, 'variant')
    if (!variant.ok) throw new Error(told(variant.reason))
    const totals = variant.changes.filter(({ kind }) => kind === 'total')
    expect(totals.length).toBeGreaterThan(0)
    expect(totals.every(({ text }) => told(text).includes(' or more'))).toBe(true)
    const states = (ride: typeof parent) => new Map(computeRide(ride).blocks.map(({ block, ledger }) => [block.id, ledger.after]))
    const before = states(opened)
    for (const [id, state] of states(variant.ride)) expect(state).toEqual(before.get(id))
  })

  it('says what is nearest, or that nothing can be made', () => {
    const parent = demoRide('spark')
    const reasonOf = (variant: ReturnType<typeof makeVariant>) => (variant.ok ? null : told(variant.reason))
    expect(reasonOf(makeVariant({ ...parent, sections: [] }, 30, 'variant'))).toContain('Nothing is planned')
    expect(reasonOf(makeVariant(parent, 5, 'variant'))).toMatch(/5[ -]minute/)
  })
})
