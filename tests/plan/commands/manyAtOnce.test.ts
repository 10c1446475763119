import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { shiftProblem, shiftRun } from '#plan/commands/shiftRun.ts'
import { singleOutRound } from '#plan/commands/singleOutRound.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { type Item, isSet, type Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { frozen } from '#tests/support/frozen.ts'
import { aBlock, aSection, aSet, aSong, countedIds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const ofSong = (...blocks: Item[]): Ride => ({ ...smallRide(), sections: [aSection('song', { song: aSong('first'), blocks })] })
const eights = (id: string, count: number) => aBlock(id, { length: { counts: count * 8 } })
const counts = (ride: Ride, ...ids: string[]) => ids.map((id) => amountOf(findBlock(ride, id)!.block.length))

describe('shiftRun', () => {
  const ride = ofSong(eights('a', 4), eights('b', 2), eights('c', 2), eights('d', 3), eights('e', 1))

  it('gives an eight of the block after the run to the one before it, and back', () => {
    const later = shiftRun(ride, { ids: ['c', 'b'], by: 1 })
    expect(counts(later.apply(ride), 'a', 'b', 'c', 'd', 'e')).toEqual([40, 16, 16, 16, 8])
    expect(told(later.label)).toBe('Moved b and c an eight later')
    const earlier = shiftRun(ride, { ids: ['b', 'c'], by: -1 })
    expect(counts(earlier.apply(ride), 'a', 'b', 'c', 'd', 'e')).toEqual([24, 16, 16, 32, 8])
    expect(earlier.apply(later.apply(ride))).toEqual(ride)
  })

  it('stays inside the round of a set', () => {
    const inSet = ofSong(eights('z', 4), aSet('set', [eights('a', 2), eights('b', 2), eights('c', 2)]), eights('y', 4))
    const after = shiftRun(inSet, { ids: ['b'], by: 1 }).apply(inSet)
    expect(counts(after, 'z', 'a', 'b', 'c', 'y')).toEqual([32, 24, 16, 8, 32])
  })

  it.each([
    [['a'], 1, 'There is no block before it in this song to trade time with.'],
    [['e'], -1, 'There is no block after it in this song to trade time with.'],
    [['a', 'c'], 1, 'Only blocks next to each other in one song can be shifted.'],
    [[], 1, 'Only blocks next to each other in one song can be shifted.'],
    [['d'], 1, '“e” is too short to give up an eight.'],
  ] as const)('says why %j cannot go by %i, and then changes nothing', (ids, by, why) => {
    expect(told(shiftProblem(ride, { ids, by })!)).toBe(why)
    expect(shiftRun(ride, { ids, by }).apply(ride)).toBe(ride)
  })

  it('takes no time of a set beside it', () => {
    const beside = ofSong(aSet('set', [eights('a', 4), eights('b', 4)]), eights('c', 4), eights('d', 4))
    expect(told(shiftProblem(beside, { ids: ['c'], by: 1 })!)).toContain('is a set')
    expect(shiftRun(beside, { ids: ['c'], by: 1 }).apply(beside)).toBe(beside)
  })

  it('keeps the length of every list and every block but the two beside the run, in any ride', () => {
    let moved = 0
    fc.assert(
      fc.property(
        arbitraryRide({ sections: 4 }),
        fc.nat(40),
        fc.nat(2),
        fc.constantFrom(1 as const, -1 as const),
        (start, pick, more, by) => {
          const lists = start.sections.flatMap(({ blocks }) => [blocks, ...blocks.filter(isSet).map(({ parts }) => parts)])
          const list: readonly Item[] = lists[pick % Math.max(1, lists.length)] ?? []
          const ids = list.slice(1, 2 + more).map(({ id }) => id)
          const after = shiftRun(frozen(start), { ids, by }).apply(start)
          expect(after === start, 'it moves just where nothing speaks against it').toBe(shiftProblem(start, { ids, by }) !== null)
          if (after === start) return
          moved++
          expect(parseRide(after)).toEqual({ ok: true, ride: after })
          const lengths = (ride: Ride) => new Map(blocksOf(ride).map(({ id, length }) => [id, amountOf(length)]))
          const [was, is] = [lengths(start), lengths(after)]
          const changed = [...was.keys()].filter((id) => was.get(id) !== is.get(id))
          expect(changed).toEqual([list[0]!.id, list[1 + ids.length]!.id])
          expect(is.get(changed[0]!)! + is.get(changed[1]!)!).toBe(was.get(changed[0]!)! + was.get(changed[1]!)!)
          expect(Math.min(is.get(changed[0]!)!, is.get(changed[1]!)!)).toBeGreaterThan(0)
        },
      ),
      { numRuns: 300 },
    )
    expect(moved, 'rides in which something can move').toBeGreaterThan(20)
  })
})

describe('singleOutRound', () => {
  const set = (change = {}) => ({ ...aSet('set', [eights('push', 2), eights('ease', 2)]), rounds: 4, ...change })

  it.each([1, 2, 3, 4])('round %i stands alone between the others', (round) => {
    const ride = ofSong(set())
    const { blockIds, apply } = singleOutRound(ride, { setId: 'set', round, newId: countedIds('new-') })
    const after = apply(ride)
    const at = after.sections[0]!.blocks.findIndex(({ id }) => id === blockIds[0])
    const rounds = (items: readonly Item[]) => items.reduce((sum, item) => sum + (isSet(item) ? item.rounds : 1 / 2), 0)
    expect(after.sections[0]!.blocks.slice(at, at + 2).map(({ id }) => id)).toEqual(blockIds)
    expect(rounds(after.sections[0]!.blocks.slice(0, at))).toBe(round - 1)
    expect(rounds(after.sections[0]!.blocks.slice(at + 2))).toBe(4 - round)
  })

  it('says what it did, and leaves what it is not about', () => {
    const ride = ofSong(set({ label: 'four' }))
    expect(told(singleOutRound(ride, { setId: 'set', round: 2, newId: countedIds('n') }).label)).toBe('Took round 2 out of four')
    for (const round of [0, 5, Number.NaN])
      expect(singleOutRound(ride, { setId: 'set', round, newId: countedIds('n') }).apply(ride)).toBe(ride)
    expect(singleOutRound(ride, { setId: 'no', round: 1, newId: countedIds('n') }).apply(ride)).toBe(ride)
  })

  it('a change of the round changes no other', () => {
    const ride = ofSong(set())
    const { blockIds, apply } = singleOutRound(ride, { setId: 'set', round: 3, newId: countedIds('new-') })
    const after = computeRide(apply(ride)).blocks
    expect(after.filter(({ block }) => block.id === blockIds[0])).toHaveLength(1)
    expect(after.findIndex(({ block }) => block.id === blockIds[0])).toBe(4)
  })

  it('leaves every ride as it was to the second and to the step, whatever the rounds add', () => {
    let sets = 0
    fc.assert(
      fc.property(arbitraryRide({ sections: 3 }), fc.nat(5), fc.nat(9), fc.integer({ min: -3, max: 3 }), (drawn, pick, which, steps) => {
        const found = drawn.sections.flatMap(({ blocks }) => blocks).filter(isSet)
        const chosen = found[pick % Math.max(1, found.length)]
        if (!chosen || chosen.rounds < 2) return
        const start = withAdded(drawn, chosen.id, steps)
        const newId = countedIds('new-')
        const command = singleOutRound(frozen(start), { setId: chosen.id, round: 1 + (which % chosen.rounds), newId })
        const after = command.apply(start)
        if (after === start) return
        sets++
        expect(command.apply(start)).toEqual(after)
        expect(parseRide(after)).toEqual({ ok: true, ride: after })
        expect(played(after)).toEqual(played(start))
      }),
      { numRuns: 200 },
    )
    expect(sets).toBeGreaterThan(20)
  })
})

const blocksOf = (ride: Ride) => ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))

const withAdded = (ride: Ride, setId: string, steps: number): Ride => ({
  ...ride,
  sections: ride.sections.map((section) => ({
    ...section,
    blocks: section.blocks.map((item) => {
      if (item.id !== setId) return item
      const { perRound: _, ...bare } = item as Extract<Item, { parts: unknown }>
      return steps === 0 ? bare : { ...bare, perRound: { steps } }
    }),
  })),
})

const played = (ride: Ride) =>
  computeRide(ride).blocks.map(({ from, to, foot, ledger, block }) => [from, to, foot, ledger.before, ledger.after, block.effort])
