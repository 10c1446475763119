import { describe, expect, it } from 'vitest'
import { moveItem } from '#plan/commands/moveItem.ts'
import { movePart } from '#plan/commands/movePart.ts'
import { moveSection } from '#plan/commands/moveSection.ts'
import type { Block } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { aBlock, inSeconds, layout, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const ride = smallRide()

describe('moveItem', () => {
  it.each([
    [0, 'c a b'],
    [1, 'a c b'],
    [-5, 'c a b'],
  ])('puts c at index %i', (index, expected) => {
    const after = moveItem(ride, { itemId: 'c', sectionId: 'song', index }).apply(ride)
    expect(layout(after, 'song')).toBe(expected)
  })

  it('counts the index without the moved item', () => {
    expect(layout(moveItem(ride, { itemId: 'a', sectionId: 'song', index: 1 }).apply(ride), 'song')).toBe('b a c')
    expect(layout(moveItem(ride, { itemId: 'a', sectionId: 'song', index: 99 }).apply(ride), 'song')).toBe('b c a')
  })

  it('gives back the same ride where nothing moves', () => {
    for (const move of [
      { itemId: 'b', sectionId: 'song', index: 1 },
      { itemId: 'c', sectionId: 'song', index: 7 },
      { itemId: 'nobody', sectionId: 'song', index: 0 },
      { itemId: 'b', sectionId: 'nowhere', index: 0 },
    ])
      expect(moveItem(ride, move).apply(ride)).toBe(ride)
  })

  it('keeps everything it does not touch', () => {
    const after = moveItem(ride, { itemId: 'c', sectionId: 'song', index: 0 }).apply(ride)
    expect(after.sections[1]).toBe(ride.sections[1])
    expect(after.sections[2]).toBe(ride.sections[2])
    expect(after.sections[0]!.blocks[0]).toBe(ride.sections[0]!.blocks[2])
    expect(after.bike).toBe(ride.bike)
  })

  it('takes a set to another song with its counts and its identity', () => {
    const after = moveItem(ride, { itemId: 'set', sectionId: 'song', index: 1 }).apply(ride)
    expect(layout(after, 'song')).toBe('a set(push ease) b c')
    expect(layout(after, 'waves')).toBe('z')
    expect(after.sections[0]!.blocks[1]).toBe(ride.sections[2]!.blocks[0])
  })

  it('turns counts into seconds and writes the cadence of the beat down', () => {
    const block = findBlock(moveItem(ride, { itemId: 'a', sectionId: 'clock', index: 0 }).apply(ride), 'a')!.block
    // 64 counts at 120 beats a minute are 32 s; one strike a beat is 60 rev/min.
    expect(block.length).toEqual({ seconds: 32 })
    expect(block.cadence).toEqual({ rpm: 60 })
  })

  it('turns seconds into the nearest whole eights, at least one, and leaves a steady cadence to the beat', () => {
    const before = { ...ride, sections: [ride.sections[0]!, { ...ride.sections[1]!, blocks: timed }, ride.sections[2]!] }
    const moved = (itemId: string) => findBlock(moveItem(before, { itemId, sectionId: 'song', index: 0 }).apply(before), itemId)!.block
    // An eight is 4 s here.
    expect(moved('long').length).toEqual({ counts: 15 * 8 })
    expect(moved('short').length).toEqual({ counts: 8 })
    expect(moved('long').cadence).toBeUndefined()
    expect(moved('ramp').cadence).toEqual({ rpm: 70, rampTo: 90 })
    expect(moved('still').cadence).toBe('legsStill')
  })

  it('turns the leads of cues into seconds with the block', () => {
    const cue = { id: 'q', moment: 'announce', lead: { counts: 16 }, text: 'Climb next.' } as const
    const before = { ...ride, sections: [{ ...ride.sections[0]!, blocks: [aBlock('a', { cues: [cue] })] }, ...ride.sections.slice(1)] }
    const block = findBlock(moveItem(before, { itemId: 'a', sectionId: 'clock', index: 0 }).apply(before), 'a')!.block
    expect(block.cues).toEqual([{ ...cue, lead: { seconds: 8 } }])
  })

  it('says what was moved where', () => {
    expect(told(moveItem(ride, { itemId: 'c', sectionId: 'song', index: 0 }).label)).toBe('Moved c before a in first')
    expect(told(moveItem(ride, { itemId: 'c', sectionId: 'clock', index: 9 }).label)).toBe('Moved c to the end of song 2')
  })
})

const timed: Block[] = [
  aBlock('long', { ...inSeconds(59), cadence: { rpm: 80 } }),
  aBlock('short', inSeconds(1)),
  aBlock('ramp', { ...inSeconds(30), cadence: { rpm: 70, rampTo: 90 } }),
  aBlock('still', { ...inSeconds(30), cadence: 'legsStill' }),
]

describe('moveSection', () => {
  const order = (index: number, sectionId = 'song') =>
    moveSection(ride, { sectionId, index })
      .apply(ride)
      .sections.map(({ id }) => id)
      .join(' ')

  it('puts the section at the index, without itself', () => {
    expect(order(1)).toBe('clock song waves')
    expect(order(2)).toBe('clock waves song')
    expect(order(99)).toBe('clock waves song')
    expect(order(0, 'waves')).toBe('waves song clock')
  })

  it('gives back the same ride where nothing moves', () => {
    expect(moveSection(ride, { sectionId: 'song', index: -1 }).apply(ride)).toBe(ride)
    expect(moveSection(ride, { sectionId: 'nowhere', index: 1 }).apply(ride)).toBe(ride)
  })

  it('says so', () => {
    expect(told(moveSection(ride, { sectionId: 'waves', index: 0 }).label)).toBe('Moved second before first')
    expect(told(moveSection(ride, { sectionId: 'song', index: 2 }).label)).toBe('Moved first to the end of the ride')
  })
})

describe('movePart', () => {
  it('moves within a set, and keeps the set where nothing moves', () => {
    const after = movePart(ride, { blockId: 'ease', to: { setId: 'set', index: 0 } }).apply(ride)
    expect(layout(after, 'waves')).toBe('set(ease push) z')
    expect(movePart(ride, { blockId: 'ease', to: { setId: 'set', index: 5 } }).apply(ride)).toBe(ride)
  })

  it('moves a block into a set, and a part out of one', () => {
    const into = movePart(ride, { blockId: 'z', to: { setId: 'set', index: 1 } }).apply(ride)
    expect(layout(into, 'waves')).toBe('set(push z ease)')
    const out = movePart(ride, { blockId: 'push', to: { sectionId: 'waves', index: 2 } }).apply(ride)
    expect(layout(out, 'waves')).toBe('set(ease) z push')
  })

  it('takes out a set left empty', () => {
    const one = movePart(ride, { blockId: 'push', to: { sectionId: 'waves', index: 0 } }).apply(ride)
    const none = movePart(one, { blockId: 'ease', to: { sectionId: 'waves', index: 0 } }).apply(one)
    expect(layout(none, 'waves')).toBe('ease push z')
  })

  it('converts the length between counts and the clock', () => {
    const out = movePart(ride, { blockId: 'push', to: { sectionId: 'clock', index: 0 } }).apply(ride)
    expect(findBlock(out, 'push')!.block.length).toEqual({ seconds: 32 })
    const into = movePart(ride, { blockId: 'y', to: { setId: 'set', index: 0 } }).apply(ride)
    expect(findBlock(into, 'y')!.block.length).toEqual({ counts: 88 })
  })

  it('says so', () => {
    expect(told(movePart(ride, { blockId: 'z', to: { setId: 'set', index: 0 } }).label)).toBe('Moved z before push in the set set')
    expect(told(movePart(ride, { blockId: 'push', to: { sectionId: 'clock', index: 9 } }).label)).toBe('Moved push to the end of song 2')
  })
})
