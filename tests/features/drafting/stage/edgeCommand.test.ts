import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { edgeCommand } from '#features/drafting/stage/drag/edgeCommand.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { patchSection } from '#plan/commands/patchSection.ts'
import type { Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'

const ride: Ride = JSON.parse(readFileSync('public/demo/twenty-minute-spark.ride.json', 'utf8'))
const report = computeRide(ride)
const length = (of: Ride, id: string) => findBlock(of, id)!.block.length

describe('pulling the edge of a block', () => {
  const second = report.blocks[1]!
  const eight = (60 / 172) * 8

  it('lands on the nearest whole eight, on the count with the finer grip, and never on nothing', () => {
    const pull = (eights: number, fine: boolean) => edgeCommand(ride, report, 1, second.to + eights * eight, fine)!.command.apply(ride)
    expect(length(pull(2.4, false), second.block.id)).toEqual({ counts: 128 + 16 })
    expect(length(pull(2.4, true), second.block.id)).toEqual({ counts: 128 + 19 })
    expect(length(pull(-500, false), second.block.id)).toEqual({ counts: 8 })
    expect(length(pull(-500, true), second.block.id)).toEqual({ counts: 1 })
  })

  it('follows the pointer in every round of a set, sharing the pull among the rounds before it', () => {
    let n = 0
    const grouped = groupIntoSet(ride, { ids: ['s1b1', 's1b2'], rounds: 3, newId: () => `x${++n}` }).apply(ride)
    const before = computeRide(grouped)
    const third = before.blocks.findIndex((played) => played.block.id === 's1b2' && played.set?.round === 3)
    const after = edgeCommand(grouped, before, third, before.blocks[third]!.to + 6 * eight, false)!.command.apply(grouped)
    expect(length(after, 's1b2')).toEqual({ counts: 128 + 16 })
    expect(computeRide(after).blocks[third]!.to).toBeCloseTo(before.blocks[third]!.to + 6 * eight, 6)
  })

  it('says where the edge has fallen and how long that makes the block', () => {
    const words = (eights: number, fine: boolean) => edgeCommand(ride, report, 1, second.to + eights * eight, fine)!.words
    expect(words(1, false)).toBe('eight 26, 17 eights')
    expect(words(-0.4, false)).toBe('phrase 7, 16 eights')
    expect(words(0.3, true)).toBe('16 eights + 2')
  })

  it('counts whole seconds where there is no music, in steps of five', () => {
    const timed: Ride = { ...ride, sections: [{ id: 'w', leadInSeconds: 0, blocks: [{ ...second.block, length: { seconds: 60 } }] }] }
    const at = computeRide(timed)
    expect(length(edgeCommand(timed, at, 0, 73, false)!.command.apply(timed), second.block.id)).toEqual({ seconds: 75 })
    expect(length(edgeCommand(timed, at, 0, 73.4, true)!.command.apply(timed), second.block.id)).toEqual({ seconds: 73 })
  })

  it('measures from the in-point of the song', () => {
    const later = patchSection(ride, { sectionId: 's1', patch: { inCount: 64, outCount: 480 } }).apply(ride)
    const at = computeRide(later)
    expect(length(edgeCommand(later, at, 1, at.blocks[1]!.to + eight, false)!.command.apply(later), second.block.id)).toEqual({
      counts: 136,
    })
  })

  it('is drawn to a section mark that is near, unless the finer grip is taken', () => {
    const [first] = ride.sections
    const end = second.countTo! + 8
    const marks = [{ count: end + 3, label: 'late chorus' }]
    const marked: Ride = { ...ride, sections: [{ ...first!, song: { ...first!.song!, marks } }, ...ride.sections.slice(1)] }
    const pull = (eights: number, fine: boolean) => edgeCommand(marked, report, 1, second.to + eights * eight, fine)!.command.apply(marked)
    expect(length(pull(1, false), second.block.id)).toEqual({ counts: 128 + 11 })
    expect(length(pull(1, true), second.block.id)).toEqual({ counts: 128 + 8 })
    expect(length(pull(3, false), second.block.id)).toEqual({ counts: 128 + 24 })
  })
})
