import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { startCommand } from '#features/drafting/stage/drag/startCommand.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { moveStart } from '#plan/commands/moveStart.ts'
import type { Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'

const ride: Ride = JSON.parse(readFileSync('public/demo/twenty-minute-spark.ride.json', 'utf8'))
const report = computeRide(ride)
const eight = (60 / 172) * 8
const length = (of: Ride, id: string) => amountOf(findBlock(of, id)!.block.length)
const second = report.blocks[1]!

describe('pulling the left edge of a block', () => {
  it('takes from the block before and keeps the sum of both, wherever it is pulled', () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 200, noNaN: true }), fc.boolean(), fc.integer({ min: 1, max: 3 }), (way, fine, index) => {
        const [before, pulled] = [report.blocks[index - 1]!, report.blocks[index]!]
        const after = startCommand(ride, report, index, pulled.from + way, fine)!.command.apply(ride)
        const [a, b] = [length(after, before.block.id), length(after, pulled.block.id)]
        expect(a + b).toBe(length(ride, before.block.id) + length(ride, pulled.block.id))
        expect(Math.min(a, b)).toBeGreaterThanOrEqual(1)
        const again = computeRide(after)
        expect(again.blocks[index]!.to).toBeCloseTo(pulled.to, 6)
        expect(again.overall.total).toBeCloseTo(report.overall.total, 6)
      }),
    )
  })

  it('falls on eights and phrases, on counts with the finer grip, and says where', () => {
    const pull = (eights: number, fine: boolean) => startCommand(ride, report, 1, second.from + eights * eight, fine)!
    expect(length(pull(1.1, false).command.apply(ride), 's1b1')).toBe(72)
    expect(pull(1.1, false).words).toBe('eight 10, 15 eights')
    expect(pull(4.2, false).words).toBe('phrase 4, 12 eights')
    expect(length(pull(1.4, true).command.apply(ride), 's1b1')).toBe(75)
    expect(length(pull(100, false).command.apply(ride), 's1b2')).toBe(8)
    expect(length(pull(-100, false).command.apply(ride), 's1b1')).toBe(8)
  })

  it('makes the first block of a song longer or shorter, since nobody stands before it', () => {
    const first = report.blocks[0]!
    const after = startCommand(ride, report, 0, first.from - 4 * eight, false)!.command.apply(ride)
    expect(length(after, 's1b1')).toBe(96)
    expect(length(after, 's1b2')).toBe(length(ride, 's1b2'))
  })

  it('counts whole seconds where there is no music, in steps of five', () => {
    const block = (id: string) => ({ ...second.block, id, cues: [], length: { seconds: 60 } })
    const timed: Ride = { ...ride, sections: [{ id: 'w', song: null, leadInSeconds: 0, blocks: [block('a'), block('b')] }] }
    const at = computeRide(timed)
    const pull = (to: number, fine: boolean) => startCommand(timed, at, 1, at.blocks[1]!.from + to, fine)!.command.apply(timed)
    expect([length(pull(12, false), 'a'), length(pull(12, false), 'b')]).toEqual([70, 50])
    expect([length(pull(-12.2, true), 'a'), length(pull(-12.2, true), 'b')]).toEqual([48, 72])
    expect([length(pull(999, false), 'a'), length(pull(999, false), 'b')]).toEqual([119, 1])
  })

  it('moves the joint between parts in every round of a set by as much as the pointer', () => {
    let n = 0
    const grouped = groupIntoSet(ride, { ids: ['s1b1', 's1b2'], rounds: 3, newId: () => `x${++n}` }).apply(ride)
    const at = computeRide(grouped)
    const last = at.blocks.findIndex((played) => played.block.id === 's1b2' && played.set?.round === 3)
    const after = startCommand(grouped, at, last, at.blocks[last]!.from + 2 * eight, false)!.command.apply(grouped)
    expect(computeRide(after).blocks[last]!.from).toBeCloseTo(at.blocks[last]!.from + 2 * eight, 6)
  })
})

describe('moving a start', () => {
  it('changes nothing without a block before it, or by nothing', () => {
    expect(moveStart(ride, { blockId: 's1b1', by: 8 }).apply(ride)).toBe(ride)
    expect(moveStart(ride, { blockId: 's1b2', by: 0 }).apply(ride)).toBe(ride)
    expect(moveStart(ride, { blockId: 's1b2', by: Number.NaN }).apply(ride)).toBe(ride)
    expect(moveStart(ride, { blockId: 'nobody', by: 8 }).apply(ride)).toBe(ride)
  })

  it('leaves one count to both', () => {
    expect(length(moveStart(ride, { blockId: 's1b2', by: 1e9 }).apply(ride), 's1b2')).toBe(1)
    expect(length(moveStart(ride, { blockId: 's1b2', by: -1e9 }).apply(ride), 's1b1')).toBe(1)
  })
})
