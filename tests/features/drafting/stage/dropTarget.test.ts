import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { dropTarget, sectionDropIndex } from '#features/drafting/stage/dropTarget.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { movePart } from '#plan/commands/movePart.ts'
import { isSet } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'

const rides = arbitraryRide({ sections: 4, items: 5, parts: 3 })

describe('dropTarget', () => {
  it('gives an item held over its own place the index it has', () => {
    fc.assert(
      fc.property(rides, (ride) => {
        const report = computeRide(ride)
        for (const section of ride.sections) {
          for (const [index, item] of section.blocks.entries()) {
            const played = report.blocks.filter((block) => (block.set?.set.id ?? block.block.id) === item.id)
            const first = played[0]
            const last = played.at(-1)
            // A crossfade can cut a block down to nothing; then it has no place of its own to be held over.
            if (!first || !last || last.to - first.from < 1e-3) continue
            const own = report.sections[first.section]!
            if (first.from < own.one || last.to > own.to) continue
            const target = dropTarget(ride, report, (first.from + last.to) / 2, new Set([item.id]), !isSet(item))
            expect(target).toEqual({ sectionId: section.id, index })
          }
        }
      }),
      { numRuns: 200 },
    )
  })

  it('always names a place that the commands accept and that keeps every block', () => {
    fc.assert(
      fc.property(rides, fc.double({ min: -100, max: 4000, noNaN: true }), fc.nat(), (ride, at, pick) => {
        const items = ride.sections.flatMap((section) => section.blocks)
        const item = items[pick % Math.max(1, items.length)]
        if (!item) return
        const target = dropTarget(ride, computeRide(ride), at, new Set([item.id]), !isSet(item))
        expect(target).not.toBeNull()
        const command =
          'setId' in target! ? movePart(ride, { blockId: item.id, to: target! }) : moveItem(ride, { itemId: item.id, ...target! })
        const ids = (of: typeof ride) =>
          of.sections
            .flatMap((section) =>
              section.blocks.flatMap((other) => (isSet(other) ? [other.id, ...other.parts.map((part) => part.id)] : [other.id])),
            )
            .sort()
        expect(ids(command.apply(ride))).toEqual(ids(ride))
      }),
      { numRuns: 300 },
    )
  })
})

describe('sectionDropIndex', () => {
  it('gives a section held over its own middle the index it has', () => {
    fc.assert(
      fc.property(rides, (ride) => {
        const report = computeRide(ride)
        report.sections.forEach((section, index) => {
          const next = report.sections[index + 1]
          // Only where songs do not overlap does a middle belong to one section alone.
          if (
            report.sections.some((other) => other.to < other.from) ||
            (next && next.from < section.to) ||
            section.to - section.from < 1e-3
          )
            return
          expect(sectionDropIndex(report, (section.from + section.to) / 2, section.sectionId)).toBe(index)
        })
      }),
      { numRuns: 200 },
    )
  })
})
