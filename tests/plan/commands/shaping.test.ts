import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { duplicateItems } from '#plan/commands/duplicateItems.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { insertItem } from '#plan/commands/insertItem.ts'
import { joinBlocks } from '#plan/commands/joinBlocks.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import { splitBlock } from '#plan/commands/splitBlock.ts'
import { ungroupSet } from '#plan/commands/ungroupSet.ts'
import type { Block, Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { aBlock, aSection, aSet, aSong, countedIds, layout, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const ride = smallRide()
const withBlocks = (...blocks: Block[]): Ride => ({ ...ride, sections: [aSection('song', { song: aSong('first'), blocks })] })
const blockOf = (after: Ride, id: string): Block => findBlock(after, id)!.block

describe('resizeBlock', () => {
  it.each([
    ['a', { counts: 40 }, { counts: 40 }],
    ['a', { counts: 40.4 }, { counts: 40 }],
    ['a', { counts: -3 }, { counts: 1 }],
    ['a', { seconds: 30 }, { counts: 64 - 4 }],
    ['push', { counts: 8 }, { counts: 8 }],
    ['x', { seconds: 12.6 }, { seconds: 13 }],
    ['x', { seconds: 0 }, { seconds: 1 }],
    ['x', { counts: 60 }, { seconds: 30 }],
  ])('%s to %o is %o', (blockId, length, expected) => {
    const after = resizeBlock(ride, { blockId, length }).apply(ride)
    // 30 s are seven and a half eights of 4 s: the nearest whole number is eight eights, which changes nothing.
    if (blockId === 'a' && 'seconds' in length) return expect(after).toBe(ride)
    expect(blockOf(after, blockId).length).toEqual(expected)
  })

  it('keeps the ride where the length is the same, and every other block where it is not', () => {
    expect(resizeBlock(ride, { blockId: 'a', length: { counts: 64 } }).apply(ride)).toBe(ride)
    const after = resizeBlock(ride, { blockId: 'push', length: { counts: 8 } }).apply(ride)
    expect(after.sections[0]).toBe(ride.sections[0])
    expect(after.sections[2]!.blocks[1]).toBe(ride.sections[2]!.blocks[1])
    expect(blockOf(after, 'ease')).toBe(blockOf(ride, 'ease'))
  })

  it('says which way and how long', () => {
    expect(told(resizeBlock(ride, { blockId: 'a', length: { counts: 16 } }).label)).toBe('Shortened a to 2 eights')
    expect(told(resizeBlock(ride, { blockId: 'a', length: { counts: 68 } }).label)).toBe('Lengthened a to 8 eights + 4')
    expect(told(resizeBlock(ride, { blockId: 'x', length: { seconds: 90 } }).label)).toBe('Lengthened x to 1:30')
  })
})

describe('insertItem', () => {
  it('puts a block at the index, measured as the section is', () => {
    const after = insertItem(ride, { sectionId: 'clock', index: 1, item: aBlock('new') }).apply(ride)
    expect(layout(after, 'clock')).toBe('x new y')
    expect('seconds' in blockOf(after, 'new').length).toBe(true)
  })

  it('does nothing with an id that is taken, an empty set or an unknown section', () => {
    for (const item of [aBlock('a'), aBlock('push'), aSet('s2', []), aSet('s2', [aBlock('push')])])
      expect(insertItem(ride, { sectionId: 'song', index: 0, item }).apply(ride)).toBe(ride)
    expect(insertItem(ride, { sectionId: 'nowhere', index: 0, item: aBlock('new') }).apply(ride)).toBe(ride)
  })

  it('says so', () => {
    expect(told(insertItem(ride, { sectionId: 'song', index: 0, item: aBlock('push it') }).label)).toBe('Added push it before a in first')
    expect(told(insertItem(ride, { sectionId: 'clock', index: 2, item: aBlock('new') }).label)).toBe('Added new to the end of song 2')
  })
})

describe('deleteItems', () => {
  it('takes out blocks, parts and sets, and a set left empty', () => {
    const after = deleteItems(ride, ['a', 'push', 'y']).apply(ride)
    expect([layout(after, 'song'), layout(after, 'clock'), layout(after, 'waves')]).toEqual(['b c', 'x', 'set(ease) z'])
    expect(layout(deleteItems(ride, ['push', 'ease']).apply(ride), 'waves')).toBe('z')
    expect(layout(deleteItems(ride, ['set']).apply(ride), 'waves')).toBe('z')
  })

  it('keeps the ride when nothing is meant, and other sections when something is', () => {
    expect(deleteItems(ride, ['nobody']).apply(ride)).toBe(ride)
    expect(deleteItems(ride, ['a']).apply(ride).sections[1]).toBe(ride.sections[1])
  })

  it('names up to three', () => {
    expect(told(deleteItems(ride, ['a', 'push']).label)).toBe('Deleted a and push')
    expect(told(deleteItems(ride, ['a', 'b', 'c', 'x']).label)).toBe('Deleted 4 blocks')
  })
})

describe('duplicateItems', () => {
  it('puts the copies together after the last one copied', () => {
    const after = duplicateItems(ride, { ids: ['a', 'b', 'y'], newId: countedIds() }).apply(ride)
    expect([layout(after, 'song'), layout(after, 'clock')]).toEqual(['a b n1 n2 c', 'x y n3'])
  })

  it('copies a part inside its set, and a whole set once', () => {
    expect(layout(duplicateItems(ride, { ids: ['push'], newId: countedIds() }).apply(ride), 'waves')).toBe('set(push n1 ease) z')
    expect(layout(duplicateItems(ride, { ids: ['set', 'push'], newId: countedIds() }).apply(ride), 'waves')).toBe(
      'set(push ease) n1(n2 n3) z',
    )
  })

  it('gives equal rides when applied twice, as a preview and then for good', () => {
    const command = duplicateItems(ride, { ids: ['set'], newId: countedIds() })
    expect(command.apply(ride)).toEqual(command.apply(ride))
  })

  it('leaves a section alone that is full', () => {
    const full = withBlocks(...Array.from({ length: 400 }, (_, index) => aBlock(`b${index}`)))
    expect(duplicateItems(full, { ids: ['b7'], newId: countedIds() }).apply(full)).toBe(full)
  })
})

describe('splitBlock', () => {
  const ramp = aBlock('ramp', {
    effort: { from: 2, to: 9 },
    resistance: { kind: 'change', mode: 'exact', steps: 2 },
    cadence: { rpm: 60, rampTo: 80 },
    lead: 'swap',
    notes: 'mind the knees',
    minEights: 6,
    cues: [{ id: 'q', moment: 'action', lead: { counts: 0 }, text: 'Go.' }],
  })
  const before = withBlocks(ramp)
  const after = splitBlock(before, { blockId: 'ramp', at: 32, newId: countedIds() }).apply(before)

  it('cuts ramps where they stand', () => {
    expect(blockOf(after, 'ramp')).toMatchObject({ length: { counts: 32 }, effort: { from: 2, to: 5.5 }, cadence: { rpm: 60, rampTo: 70 } })
    expect(blockOf(after, 'n1')).toMatchObject({ length: { counts: 32 }, effort: { from: 5.5, to: 9 }, cadence: { rpm: 70, rampTo: 80 } })
  })

  it('keeps what is done once with the first half', () => {
    expect(blockOf(after, 'n1')).toMatchObject({ resistance: { kind: 'keep' }, cues: [] })
    for (const gone of ['lead', 'notes', 'minEights']) expect(blockOf(after, 'n1')).not.toHaveProperty(gone)
    expect(blockOf(after, 'ramp')).toMatchObject({ lead: 'swap', notes: 'mind the knees', cues: ramp.cues, resistance: ramp.resistance })
    expect(blockOf(after, 'ramp')).not.toHaveProperty('minEights')
  })

  it('changes neither curve nor ledger nor feet', () => {
    const [whole, halves] = [computeRide(before), computeRide(after)]
    expect(halves.overall).toEqual({ ...whole.overall, centroid: expect.closeTo(whole.overall.centroid!, 9) })
    expect(halves.blocks.at(-1)!.ledger.after).toEqual(whole.blocks.at(-1)!.ledger.after)
    expect(halves.blocks.map(({ foot }) => foot)).toEqual([whole.blocks[0]!.foot, whole.blocks[0]!.foot])
  })

  it.each([0, 64, 65, -1, Number.NaN])('does nothing at %d', (at) => {
    expect(splitBlock(before, { blockId: 'ramp', at, newId: countedIds() }).apply(before)).toBe(before)
  })

  it('goes on with an alternating move on the side it has come to', () => {
    // biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
    const move = { name: 'lean', counts: 8, side: 'left', then: 'alternate' } as const
    const leans = withBlocks(aBlock('leans', { move }))
    const sideAfter = (at: number) =>
      blockOf(splitBlock(leans, { blockId: 'leans', at, newId: countedIds() }).apply(leans), 'n1').move?.side
    expect([8, 16, 24].map(sideAfter)).toEqual(['right', 'left', 'right'])
  })

  it('splits parts of sets and blocks by the clock', () => {
    expect(layout(splitBlock(ride, { blockId: 'push', at: 8, newId: countedIds() }).apply(ride), 'waves')).toBe('set(push n1 ease) z')
    const timed = splitBlock(ride, { blockId: 'x', at: 20, newId: countedIds() })
    expect([blockOf(timed.apply(ride), 'x').length, blockOf(timed.apply(ride), 'n1').length]).toEqual([{ seconds: 20 }, { seconds: 40 }])
    expect(told(timed.label)).toBe('Split x after 20 s')
  })
})

describe('joinBlocks', () => {
  it('takes back a split', () => {
    const before = withBlocks(aBlock('a', { effort: { from: 2, to: 9 } }), aBlock('b'))
    const split = splitBlock(before, { blockId: 'a', at: 24, newId: countedIds() }).apply(before)
    expect(joinBlocks(split, { blockId: 'a' }).apply(split)).toEqual(before)
  })

  it('goes on as the first block where the effort steps', () => {
    const before = withBlocks(aBlock('a', { effort: { from: 3, to: 3 } }), aBlock('b', { effort: { from: 7, to: 7 } }))
    expect(blockOf(joinBlocks(before, { blockId: 'a' }).apply(before), 'a')).toMatchObject({
      length: { counts: 128 },
      effort: { from: 3, to: 3 },
    })
  })

  it('keeps notes of both, and of the second what does not announce the change that is gone', () => {
    const cue = (id: string, moment: 'announce' | 'form') => ({ id, moment, lead: { counts: 8 }, text: id })
    const before = withBlocks(
      aBlock('a', { notes: 'one', cues: [cue('p', 'announce')] }),
      aBlock('b', { notes: 'two', cues: [cue('q', 'announce'), cue('r', 'form')] }),
    )
    const joined = blockOf(joinBlocks(before, { blockId: 'a' }).apply(before), 'a')
    expect(joined.notes).toBe('one\ntwo')
    expect(joined.cues.map(({ id }) => id)).toEqual(['p', 'r'])
  })

  it('does nothing at the end, before a set and for a set', () => {
    const before: Ride = {
      ...ride,
      sections: [aSection('song', { song: aSong('s'), blocks: [aBlock('a'), aSet('set', [aBlock('push')])] })],
    }
    for (const blockId of ['a', 'push', 'set', 'nobody']) expect(joinBlocks(before, { blockId }).apply(before)).toBe(before)
  })

  it('joins parts', () => {
    expect(layout(joinBlocks(ride, { blockId: 'push' }).apply(ride), 'waves')).toBe('set(push) z')
  })
})

describe('groupIntoSet', () => {
  it('makes neighbours the parts of a set, in the order of the ride', () => {
    const after = groupIntoSet(ride, { ids: ['c', 'b'], rounds: 3, newId: countedIds() }).apply(ride)
    expect(layout(after, 'song')).toBe('a n1(b c)')
    expect(after.sections[0]!.blocks[1]).toMatchObject({ rounds: 3 })
  })

  it.each([[['a', 'c']], [['a', 'x']], [['set', 'z']], [['push', 'ease']], [['nobody']], [[]]])('does nothing with %o', (ids) => {
    expect(groupIntoSet(ride, { ids, rounds: 3, newId: countedIds() }).apply(ride)).toBe(ride)
  })

  it('holds rounds to 1–100 and says how many', () => {
    expect(told(groupIntoSet(ride, { ids: ['a', 'b'], rounds: 0, newId: countedIds() }).label)).toBe(
      'Grouped a and b into a set of 1 round',
    )
    expect(told(groupIntoSet(ride, { ids: ['a', 'b'], rounds: 900, newId: countedIds() }).label)).toBe(
      'Grouped a and b into a set of 100 rounds',
    )
  })
})

describe('ungroupSet', () => {
  const exact = (steps: number) => ({ kind: 'change', mode: 'exact', steps }) as const
  const total = (steps: number) => ({ kind: 'total', from: steps, to: steps }) as const
  const adding = (push: Block['resistance'], ease: Block['resistance']): Ride => ({
    ...ride,
    sections: [
      aSection('waves', {
        song: aSong('s'),
        blocks: [
          aSet('set', [aBlock('push', { resistance: push }), aBlock('ease', { resistance: ease })], { perRound: { steps: 1 } }),
          aBlock('z'),
        ],
      }),
    ],
  })

  it.each([
    ['totals', total(6), total(2)],
    ['changes', exact(4), exact(-4)],
    ['a total and a change', total(6), exact(-4)],
    ['a change and a total', exact(4), total(2)],
    ['all off and a change', { kind: 'allOff' }, exact(3)],
    ['keep and by feel', { kind: 'keep' }, { kind: 'byFeel', from: 3, to: 5 }],
  ] as const)('plays out rounds that add, to the step: %s', (_, push, ease) => {
    const before = adding(push, ease)
    const after = ungroupSet(before, { setId: 'set', newId: countedIds() }).apply(before)
    expect(layout(after, 'waves')).toBe('push ease n1 n2 n3 n4 z')
    const states = (of: Ride) => computeRide(of).blocks.map(({ ledger, from, to, foot }) => [ledger.after, from, to, foot])
    expect(states(after)).toEqual(states(before))
  })

  it('does nothing for what is no set', () => {
    expect(ungroupSet(ride, { setId: 'a', newId: countedIds() }).apply(ride)).toBe(ride)
    expect(told(ungroupSet(ride, { setId: 'set', newId: countedIds() }).label)).toBe('Expanded set into 6 blocks')
  })
})
