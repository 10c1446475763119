import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Block, Ride } from '#plan/model.ts'
import { aBlock, aSection, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const rideOf = (blocks: Block[], change: Partial<Ride> = {}): Ride => ({
  ...smallRide(),
  level: 'mixed',
  sections: [aSection('s', { blocks })],
  ...change,
})
const clocked = (id: string, seconds: number, effort: number, change: Partial<Block> = {}): Block =>
  aBlock(id, { ...inSeconds(seconds), cadence: { rpm: 80 }, effort: { from: effort, to: effort }, ...change })
const rulesAt = (ride: Ride, blockId: string) =>
  computeRide(ride)
    .findings.filter((finding) => finding.blockId === blockId)
    .map(({ rule }) => rule)
const at = (steps: number): Block['resistance'] => ({ kind: 'total', from: steps, to: steps })

describe('one cause is one finding', () => {
  it('an easy block far too heavy is told by its demand, one a little heavy by its total', () => {
    const slow = (id: string, steps: number) => clocked(id, 60, 3, { resistance: at(steps), cadence: { rpm: 60 } })
    const ride = (steps: number) => rideOf([slow('a', 2), slow('b', steps), slow('c', 2)])
    const weighed = (one: Ride) => rulesAt(one, 'b').filter((rule) => rule !== 'unannounced' && rule !== 'largestAdded')
    expect(weighed(ride(4))).toEqual(['easyTotal'])
    expect(weighed(ride(8))).toEqual(['intentAgainstDemand'])
  })

  it('words that come too late are told once', () => {
    const song = aSong('m')
    const cue = { id: 'q', moment: 'announce', lead: { counts: 1 }, text: 'Up.' } as const
    const up = aBlock('b', { posture: 'standing', hands: 'wide', resistance: at(6), cues: [cue] })
    const ride = { ...smallRide(), sections: [aSection('s', { song, blocks: [aBlock('a'), up] })] }
    const rules = rulesAt(ride, 'b')
    expect(rules).toContain('cueLate')
    expect(rules).not.toContain('cuePlace')
  })
})

describe('a stopped wheel', () => {
  it('is asked for no load, no hands, no announcement and no form', () => {
    const still = clocked('st', 60, 3, {
      cadence: 'legsStill',
      posture: 'seated',
      hands: 'ends',
      resistance: at(6),
      move: { name: 'hamstring stretch', counts: 32 },
    })
    expect(rulesAt(rideOf([clocked('a', 60, 3, { resistance: at(1) }), still]), 'st')).toEqual([])
    expect(rulesAt(rideOf([clocked('a', 60, 3, { resistance: at(1) }), { ...still, posture: 'offBike' }]), 'st')).toEqual([])
  })
})

describe('a breath caught inside a run of work', () => {
  const run = (breath: number, after: number) =>
    rideOf([clocked('a', 60, 4), clocked('hard', 30, 8), clocked('breath', breath, 4), clocked('on', 30, after), clocked('z', 90, 3)])
  const debts = (ride: Ride) =>
    computeRide(ride)
      .findings.filter(({ rule }) => rule === 'recoveryDebt')
      .map(({ blockId }) => blockId)

  it('is not judged as a recovery', () => {
    expect(debts(run(8, 8))).toEqual([])
    expect(debts(run(12, 7))).toEqual([])
  })

  it('is one of 5 to 12 s, and the work goes on after it', () => {
    expect(debts(run(15, 8))).toEqual(['hard'])
    expect(debts(run(4, 8))).toEqual(['hard'])
    expect(debts(run(8, 6))).toEqual(['hard'])
  })

  it('is not what is planned as a recovery, however short', () => {
    const planned = run(8, 8)
    Object.assign(planned.sections[0]!, {
      blocks: planned.sections[0]!.blocks.map((block) => (block.id === 'breath' ? { ...block, terrain: 'recover' } : block)),
    })
    expect(debts(planned)).toEqual(['hard'])
  })
})
