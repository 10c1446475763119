import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Block, Leader, Ride } from '#plan/model.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const LEADERS: Leader[] = [
  { id: 'o', name: 'Odalys Thornquill', wordsPerMinute: 140 },
  { id: 'r', name: 'Remy Castellane', wordsPerMinute: 140 },
]
const effort = (level: number): Partial<Block> => ({ effort: { from: level, to: level } })
const remy = (level: number, more: Partial<Block> = {}): Partial<Block> => ({ ...effort(level), leader: 'r', ...more })
const rideOf = (blocks: Partial<Block>[], more: Partial<Ride> = {}): Ride => ({
  ...smallRide(),
  leaders: LEADERS,
  sections: [aSection('s', { song: aSong('m'), blocks: blocks.map((block, i) => aBlock(`b${i + 1}`, block)) })],
  ...more,
})
const RULES = new Set(['handOverInPush', 'handOverOffPhrase', 'leaderWithoutBlock', 'leadAndVoiceApart'])
const found = (ride: Ride) => computeRide(ride).findings.filter(({ rule }) => RULES.has(rule))
const texts = (ride: Ride) => found(ride).map(({ text }) => told(text))
const mended = (ride: Ride) => found(ride)[0]!.fixes[0]!.command.apply(ride)
const leads = ({ sections }: Ride) => sections[0]!.blocks.map((block) => ('parts' in block ? '' : (block.leader ?? 'o')))

describe('a change of hands', () => {
  it('says nothing in a recovery at the end of a phrase, and nothing of one who teaches alone', () => {
    expect(found(rideOf([effort(8), remy(3), remy(8)]))).toEqual([])
    expect(found(rideOf([effort(8), effort(8)], { leaders: [LEADERS[0]!] }))).toEqual([])
  })

  it('inside a push is a warning that moves it to the recovery', () => {
    const ride = rideOf([effort(7), remy(8), remy(8), remy(3)])
    expect(found(ride)).toMatchObject([{ rule: 'handOverInPush', severity: 'warning', blockId: 'b2' }])
    expect(texts(ride)).toEqual(['Remy takes over at “b2”, in the middle of a push; switch where riders recover.'])
    expect(found(ride)[0]!.fixes.map(({ label }) => told(label))).toEqual(['Switch at “b4”'])
    expect(leads(mended(ride))).toEqual(['o', 'o', 'o', 'r'])
    expect(found(mended(ride))).toEqual([])
  })

  it('of the microphone alone counts as one', () => {
    expect(texts(rideOf([effort(7), { ...effort(8), mic: 'r' }, remy(3)]))).toContain(
      'Remy takes the mic at “b2”, in the middle of a push; switch where riders recover.',
    )
  })

  it('has no repair in rounds, which share their blocks, or where nothing comes after the push', () => {
    const parts = [aBlock('p1', effort(8)), aBlock('p2', remy(8))]
    const set = { ...rideOf([]), sections: [aSection('s', { song: aSong('m'), blocks: [aSet('set', parts), aBlock('z', remy(3))] })] }
    expect(found(set).map(({ fixes }) => fixes.length)).toEqual([0, 0])
    expect(found(rideOf([effort(8), remy(8)]))[0]!.fixes).toEqual([])
  })

  it('off the end of a phrase says by how much', () => {
    const ride = rideOf([{ ...effort(4), length: { counts: 40 } }, remy(3)])
    expect(texts(ride)).toEqual(['Remy takes over at “b2”, 1 eight after the end of a phrase.'])
  })

  it('from song to song needs no phrase', () => {
    const ride = rideOf([{ ...effort(4), length: { counts: 40 } }])
    const next = aSection('t', { song: aSong('n'), blocks: [aBlock('z', remy(4))] })
    expect(found({ ...ride, sections: [...ride.sections, next] })).toEqual([])
  })
})

describe('two leaders', () => {
  it('of whom one has no block are named, with the way to teach alone', () => {
    const ride = rideOf([effort(4), effort(5)])
    expect(texts(ride)).toEqual(['Remy leads no block and speaks in none; select blocks and give them to Remy.'])
    expect(mended(ride).leaders).toEqual([LEADERS[0]])
    expect(found(rideOf([]))).toEqual([])
  })

  it('of whom one leads hard work and the other speaks are asked who calls it, once a run', () => {
    const apart = { mic: 'r' }
    const ride = rideOf([{ ...effort(4), ...apart }, { ...effort(8), ...apart }, { ...effort(9), ...apart }, effort(3)])
    expect(texts(ride)).toEqual(['Odalys leads and Remy speaks in “b2” and the block after it: agree on who counts and who calls the end.'])
    const mic = mended(ride).sections[0]!.blocks.map((block) => 'mic' in block)
    expect(mic).toEqual([true, false, false, false])
  })

  it('who share a first name are told apart', () => {
    const leaders = [LEADERS[0]!, { ...LEADERS[1]!, name: 'Odalys Vane' }]
    expect(texts(rideOf([effort(4)], { leaders }))[0]).toMatch(/^Odalys Vane leads no block/)
  })
})
