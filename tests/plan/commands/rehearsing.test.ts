import { describe, expect, it } from 'vitest'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { deleteSection } from '#plan/commands/deleteSection.ts'
import { duplicateItems } from '#plan/commands/duplicateItems.ts'
import { markShaky, unmarkShaky } from '#plan/commands/markShaky.ts'
import { markSong, quietSong } from '#plan/commands/markSong.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { setBars } from '#plan/commands/setBars.ts'
import { mergeRides } from '#plan/merge/mergeRides.ts'
import type { Ride } from '#plan/model.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import { countedIds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const songOf = (ride: Ride) => ride.sections[0]!.song!

describe('shaky blocks', () => {
  const mark = (ride: Ride, ...ids: string[]) => ids.reduce((now, blockId) => markShaky(now, { blockId }).apply(now), ride)

  it('are marked once, in the order in which they were marked, and let go again', () => {
    const ride = mark(smallRide(), 'b', 'push', 'b')
    expect(ride.shaky).toEqual(['b', 'push'])
    expect(told(markShaky(ride, { blockId: 'b' }).label)).toBe('Marked b: needs practice')
    const left = unmarkShaky(ride, { blockId: 'b' }).apply(ride)
    expect(left.shaky).toEqual(['push'])
    expect(unmarkShaky(left, { blockId: 'push' }).apply(left)).not.toHaveProperty('shaky')
    expect(unmarkShaky(left, { blockId: 'z' }).apply(left)).toBe(left)
  })

  it('are blocks of the ride, and no sets', () => {
    const ride = smallRide()
    expect(markShaky(ride, { blockId: 'gone' }).apply(ride)).toBe(ride)
    expect(markShaky(ride, { blockId: 'set' }).apply(ride)).toBe(ride)
  })

  it('lose their mark with the block, whatever takes it, and their copies have none', () => {
    const ride = mark(smallRide(), 'a', 'push')
    expect(deleteItems(ride, ['a']).apply(ride).shaky).toEqual(['push'])
    expect(deleteSection(ride, { sectionId: 'waves' }).apply(ride).shaky).toEqual(['a'])
    expect(duplicateItems(ride, { ids: ['a'], newId: countedIds() }).apply(ride).shaky).toEqual(['a', 'push'])
    const none = deleteItems(ride, ['a', 'push']).apply(ride)
    expect(none).not.toHaveProperty('shaky')
    expect(patchRide({ title: 'other' }).apply(ride).shaky).toBe(ride.shaky)
  })

  it('stay mine when two copies come together, less what is gone', () => {
    const base = smallRide()
    const mine = mark(base, 'a', 'b')
    const theirs = deleteItems(mark(base, 'c'), ['b']).apply(mark(base, 'c'))
    expect(mergeRides(base, mine, theirs).merged.shaky).toEqual(['a'])
  })
})

describe('markSong and quietSong', () => {
  it('write a mark in its place, one on a count', () => {
    let ride = smallRide()
    for (const [count, label] of [
      [64, 'chorus'],
      [0, 'intro'],
      [64, 'drop'],
    ] as const)
      ride = markSong(ride, { sectionId: 'song', count, label }).apply(ride)
    expect(songOf(ride).marks).toEqual([
      { count: 0, label: 'intro' },
      { count: 64, label: 'drop' },
    ])
    expect(told(markSong(ride, { sectionId: 'song', count: 64, label: 'drop' }).label)).toBe('Marked drop in first')
    expect(markSong(ride, { sectionId: 'clock', count: 8, label: 'drop' }).apply(ride)).toBe(ride)
    expect(markSong(ride, { sectionId: 'song', count: -8, label: 'drop' }).apply(ride)).toBe(ride)
  })

  it('join quiet stretches that touch', () => {
    let ride = smallRide()
    for (const [from, to] of [
      [64, 96],
      [0, 16],
      [96, 128],
      [120, 136],
    ] as const)
      ride = quietSong(ride, { sectionId: 'song', from, to }).apply(ride)
    expect(songOf(ride).quiet).toEqual([
      { from: 0, to: 16 },
      { from: 64, to: 136 },
    ])
    expect(quietSong(ride, { sectionId: 'song', from: 8, to: 8 }).apply(ride)).toBe(ride)
  })
})

describe('setBars', () => {
  it('counts the same beats from another one', () => {
    const ride = smallRide()
    const moved = setBars(ride, { sectionId: 'song', beatsPerBar: 3, shift: 2 }).apply(ride)
    const grid = songOf(moved).grid!
    expect(grid.beatsPerBar).toBe(3)
    expect([0, 1, 7].map((count) => secondAt(grid, count))).toEqual([2, 3, 9].map((count) => secondAt(songOf(ride).grid!, count)))
    expect(moved.sections[0]!.blocks).toBe(ride.sections[0]!.blocks)
    const back = setBars(moved, { sectionId: 'song', beatsPerBar: 4, shift: -2 }).apply(moved)
    expect([0, 5, 400].map((count) => secondAt(songOf(back).grid!, count))).toEqual([0, 2.5, 200])
  })

  it('leaves a song alone whose first beat would lie before it', () => {
    const ride = smallRide()
    expect(setBars(ride, { sectionId: 'song', beatsPerBar: 4, shift: -1 }).apply(ride)).toBe(ride)
  })
})
