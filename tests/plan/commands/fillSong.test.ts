import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { laySection } from '#engine/timeline/laySection.ts'
import { fillProblem, fillSong } from '#plan/commands/fillSong.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { type Item, isSet, type Ride } from '#plan/model.ts'
import { amountOf } from '#plan/remeasure.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { frozen } from '#tests/support/frozen.ts'
import { aBlock, aSection, aSet, aSong, countedIds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const ofSong = (...blocks: Item[]): Ride => ({ ...smallRide(), sections: [aSection('song', { song: aSong('first'), blocks })] })
const eights = (id: string, count: number) => aBlock(id, { length: { counts: count * 8 } })
const lengths = (ride: Ride) =>
  ride.sections[0]!.blocks.map((item) =>
    isSet(item) ? `${item.rounds} × ${item.parts.map(({ length }) => amountOf(length)).join('+')}` : amountOf(item.length),
  )
const fill = (ride: Ride, ids: string[], open: number) => fillSong(ride, { ids, open, newId: countedIds() })

describe('fillSong', () => {
  const ride = ofSong(eights('a', 4), eights('b', 2), eights('c', 1))

  it('makes one block longer, and what stands behind it moves to the end', () => {
    expect(lengths(fill(ride, ['b'], 41).apply(ride))).toEqual([32, 57, 8])
    expect(told(fill(ride, ['b'], 41).label)).toBe('Filled the song with b')
  })

  it('repeats several in turn, cuts the last to what is left, and gives it less than an eight', () => {
    expect(lengths(fill(ride, ['a', 'b'], 48 + 16).apply(ride))).toEqual([32, 16, 32, 16, 16, 8])
    expect(lengths(fill(ride, ['a', 'b'], 48 + 5).apply(ride))).toEqual([32, 16, 32, 21, 8])
    // In the order of the song, whatever was chosen first.
    expect(lengths(fill(ride, ['b', 'a'], 32).apply(ride))).toEqual([32, 16, 32, 8])
  })

  it('gives a set as many more rounds as there is room for', () => {
    const waves = ofSong(aSet('set', [eights('a', 1), eights('b', 1)], { rounds: 2 }), eights('c', 1))
    expect(lengths(fill(waves, ['set'], 40).apply(waves))).toEqual(['4 × 8+8', 8])
    expect(lengths(fill(waves, ['set', 'c'], 36).apply(waves))).toEqual(['2 × 8+8', 8, '2 × 8+8', 4 + 8 - 8])
    expect(told(fillProblem(waves, { ids: ['set'], open: 15 })!)).toBe('There is no room left for another round.')
  })

  it.each([
    ['a', 'c', 'Only blocks next to each other in one song can fill it.', 40],
    ['a', 'b', 'The song is full already.', 0],
  ])('says why not: %s and %s', (one, other, why, open) => {
    expect(told(fillProblem(ride, { ids: [one, other], open })!)).toBe(why)
    expect(fill(ride, [one, other], open).apply(ride)).toBe(ride)
  })

  it('never runs past the song, leaves no more open than a round, and keeps every block there was', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.nat(), fc.nat(), fc.integer({ min: 1, max: 4 }), (start, sectionAt, itemAt, many) => {
        const section = start.sections[sectionAt % Math.max(1, start.sections.length)]
        fc.pre(section !== undefined && section.blocks.length > 0)
        const from = itemAt % section!.blocks.length
        const ids = section!.blocks.slice(from, from + many).map(({ id }) => id)
        const { open } = laySection(section!)
        fc.pre(fillProblem(start, { ids, open }) === null)
        const after = fillSong(frozen(start), { ids, open, newId: countedIds('new') }).apply(start)
        const filled = after.sections.find(({ id }) => id === section!.id)!
        const laid = laySection(filled)
        expect(laid.open).toBeLessThan(open)
        expect(laid.beyond).toBeLessThan(1e-6)
        if (filled.blocks.every((item) => !isSet(item))) expect(laid.open).toBeLessThan(1e-6)
        expect(filled.blocks.map(({ id }) => id)).toEqual(expect.arrayContaining(section!.blocks.map(({ id }) => id)))
        expect(parseRide(JSON.parse(JSON.stringify(after))).ok).toBe(true)
      }),
    )
  })
})
