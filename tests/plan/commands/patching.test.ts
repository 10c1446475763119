import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { patchBlocks } from '#plan/commands/patchBlocks.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { patchSection } from '#plan/commands/patchSection.ts'
import { patchSet } from '#plan/commands/patchSet.ts'
import { setBike } from '#plan/commands/setBike.ts'
import { setDatum } from '#plan/commands/setDatum.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import { type Block, isSet, type Ride } from '#plan/model.ts'
import { findBlock, findSet } from '#plan/places.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const ride = smallRide()
const blockOf = (after: Ride, id: string): Block => findBlock(after, id)!.block

describe('patchBlock', () => {
  const patch = (change: Parameters<typeof patchBlock>[1]['patch'], blockId = 'a') => patchBlock(ride, { blockId, patch: change })

  it('replaces fields and takes out those given as undefined', () => {
    const labelled = patch({ label: undefined, posture: 'standing' }).apply(ride)
    expect(blockOf(labelled, 'a').posture).toBe('standing')
    expect(blockOf(labelled, 'a')).not.toHaveProperty('label')
  })

  it('has a name that says the counts of its move follow them', () => {
    const jumps: Ride = {
      ...ride,
      sections: [aSection('s', { blocks: [aBlock('a', { label: 'jumps on 8', move: { name: 'jump', counts: 8 } })] })],
    }
    const name = (change: Parameters<typeof patchBlock>[1]['patch']) =>
      blockOf(patchBlock(jumps, { blockId: 'a', patch: change }).apply(jumps), 'a').label
    expect(name({ move: { name: 'jump', counts: 16 } })).toBe('jumps on 16')
    expect(name({ move: { name: 'lean', counts: 16 } })).toBe('jumps on 8')
    expect(name({ move: { name: 'jump', counts: 16 }, label: 'the big ones' })).toBe('the big ones')
    expect(name({ posture: 'standing' })).toBe('jumps on 8')
  })

  it('reaches parts of sets and keeps every other block', () => {
    const after = patch({ effort: { from: 9, to: 9 } }, 'push').apply(ride)
    expect(blockOf(after, 'push').effort).toEqual({ from: 9, to: 9 })
    expect(blockOf(after, 'ease')).toBe(blockOf(ride, 'ease'))
    expect(after.sections[0]).toBe(ride.sections[0])
  })

  it('gives back the same ride when the values are held already', () => {
    expect(patch({ effort: { from: 4, to: 4 }, posture: 'seated', move: undefined }).apply(ride)).toBe(ride)
    expect(patch({ posture: 'standing' }, 'nobody').apply(ride)).toBe(ride)
  })

  it('brings numbers into range and ranges into order', () => {
    const after = patch({ effort: { from: -2, to: 14 }, resistance: { kind: 'total', from: 7.6, to: 3, aim: 20 }, length: { counts: 0.2 } })
    expect(blockOf(after.apply(ride), 'a')).toMatchObject({
      effort: { from: 0, to: 10 },
      resistance: { kind: 'total', from: 3, to: 8, aim: 8 },
      length: { counts: 1 },
    })
    const checkpoint = { kind: 'change', mode: 'exact', steps: -0.4, checkpoint: { from: 6, to: 2 } } as const
    expect(blockOf(patch({ resistance: checkpoint }).apply(ride), 'a').resistance).toEqual({
      ...checkpoint,
      steps: 0,
      checkpoint: { from: 2, to: 6 },
    })
  })

  it('changes nothing where the document cannot hold the value', () => {
    for (const bad of [{ leader: 'nobody' }, { minEights: 9, maxEights: 3 }, { move: { name: '', counts: 8 } }, { cadence: { rpm: 900 } }])
      expect(patch(bad).apply(ride)).toBe(ride)
  })

  it('says what was changed', () => {
    expect(told(patch({ effort: { from: 7, to: 7 } }).label)).toBe('Changed effort of a')
    expect(told(patch({ posture: 'standing', hands: 'ends' }).label)).toBe('Changed posture and hands of a')
    expect(told(patch({ label: 'summit' }).label)).toBe('Renamed a to summit')
    expect(told(patchBlocks(ride, { blockIds: ['a', 'b'], patch: { water: true } }).label)).toBe('Changed water break of a and b')
  })

  it('changes several at once', () => {
    const after = patchBlocks(ride, { blockIds: ['a', 'push'], patch: { water: true } }).apply(ride)
    expect(['a', 'b', 'push'].map((id) => blockOf(after, id).water)).toEqual([true, undefined, true])
  })
})

describe('patchSet', () => {
  const setAfter = (patch: Parameters<typeof patchSet>[1]['patch']) =>
    findSet(patchSet(ride, { setId: 'set', patch }).apply(ride), 'set')!.set

  it('holds rounds to 1–100 and steps to whole ones', () => {
    expect([0, 4.4, 500].map((rounds) => setAfter({ rounds }).rounds)).toEqual([1, 4, 100])
    expect(setAfter({ perRound: { steps: 1.4 } }).perRound).toEqual({ steps: 1 })
    expect(setAfter({ perRound: { steps: 0 } })).not.toHaveProperty('perRound')
  })

  it('keeps ride and parts where they stay', () => {
    expect(patchSet(ride, { setId: 'set', patch: { rounds: 3 } }).apply(ride)).toBe(ride)
    expect(setAfter({ rounds: 4 }).parts).toBe(findSet(ride, 'set')!.set.parts)
    expect(told(patchSet(ride, { setId: 'set', patch: { rounds: 4 } }).label)).toBe('Changed set to 4 rounds')
  })
})

describe('patchSection', () => {
  const patched = (patch: Parameters<typeof patchSection>[1]['patch']) => patchSection(ride, { sectionId: 'song', patch }).apply(ride)

  it('replaces fields, in whole counts', () => {
    expect(patched({ inCount: 7.6, outCount: 320, leadInSeconds: -900 }).sections[0]).toMatchObject({
      inCount: 8,
      outCount: 320,
      leadInSeconds: -600,
    })
    expect(patched({ title: 'the climb' }).sections[0]!.blocks).toBe(ride.sections[0]!.blocks)
  })

  it('changes nothing for an out-point before the in-point', () => {
    expect(patched({ inCount: 64, outCount: 32 })).toBe(ride)
  })

  it('says so', () => {
    expect(told(patchSection(ride, { sectionId: 'clock', patch: { title: 'pause' } }).label)).toBe('Renamed song 2 to pause')
    expect(told(patchSection(ride, { sectionId: 'song', patch: { lead: 'left' } }).label)).toBe('Changed lead foot of first')
  })
})

describe('patchRide', () => {
  it('holds slot, briefing and clear-up to their bounds', () => {
    expect(patchRide({ slotMinutes: 999, briefingSeconds: -5 }).apply(ride)).toMatchObject({ slotMinutes: 360, briefingSeconds: 0 })
    expect(patchRide({ slotMinutes: 45 }).apply(ride)).toBe(ride)
    expect(patchRide({ startsAt: 'noon' }).apply(ride)).toBe(ride)
  })

  it('says English in one way: by no language at all', () => {
    const german = patchRide({ language: 'de' }).apply(ride)
    expect(german.language).toBe('de')
    expect(patchRide({ language: 'en' }).apply(german)).toStrictEqual(ride)
    expect(patchRide({ language: 'en' }).apply(ride)).toBe(ride)
  })

  it('gives the blocks of a leader who is gone to the first one', () => {
    const two = [...ride.leaders, { id: 'co', name: 'Remy', wordsPerMinute: 150 }]
    const shared = patchBlock(ride, { blockId: 'push', patch: { leader: 'co', mic: 'co' } }).apply(patchRide({ leaders: two }).apply(ride))
    expect(blockOf(shared, 'push').leader).toBe('co')
    const alone = patchRide({ leaders: ride.leaders }).apply(shared)
    expect(blockOf(alone, 'push')).toEqual(blockOf(ride, 'push'))
  })

  it('says so', () => {
    expect(told(patchRide({ title: 'Ridge' }).label)).toBe('Renamed the ride to Ridge')
    expect(told(patchRide({ slotMinutes: 30, level: 'advanced' }).label)).toBe('Changed the ride’s class length and level')
  })
})

const calls: Ride = {
  ...ride,
  sections: [
    aSection('song', {
      song: aSong('s'),
      blocks: [
        aBlock('total', { resistance: { kind: 'total', from: 3, to: 5, aim: 4 } }),
        aBlock('change', { resistance: { kind: 'change', mode: 'exact', steps: 3, checkpoint: { from: 6, to: 8 } } }),
        aSet('set', [aBlock('feel', { resistance: { kind: 'byFeel', from: 1, to: 2 } })], { perRound: { steps: 2 } }),
        aBlock('keep'),
        aBlock('off', { resistance: { kind: 'allOff' } }),
      ],
    }),
  ],
}

describe('setDatum', () => {
  it('leaves the knob where it was in every block', () => {
    const loose = setDatum('loose').apply(calls)
    const base = DEFAULT_BIKE.base * DEFAULT_BIKE.stepsPerUnit
    const states = (of: Ride, shift: number) =>
      computeRide(of).blocks.map(({ ledger: { after } }) => [after.low! + shift, after.nominal + shift, after.high! + shift])
    expect(states(loose, 0)).toEqual(states(calls, base))
    expect(setDatum('base').apply(loose)).toEqual(calls)
    expect(setDatum('base').apply(calls)).toBe(calls)
  })
})

describe('setBike', () => {
  it('keeps turns as turns in the steps of the new bike', () => {
    const fine = { ...DEFAULT_BIKE, id: 'fine', name: 'fine knob', stepsPerUnit: 8 }
    const after = setBike(calls, fine).apply(calls)
    expect(blockOf(after, 'total').resistance).toEqual({ kind: 'total', from: 6, to: 10, aim: 8 })
    expect(blockOf(after, 'change').resistance).toEqual({ kind: 'change', mode: 'exact', steps: 6, checkpoint: { from: 12, to: 16 } })
    expect(blockOf(after, 'feel').resistance).toEqual({ kind: 'byFeel', from: 2, to: 4 })
    expect(after.sections[0]!.blocks.find(isSet)?.perRound).toEqual({ steps: 4 })
    expect(blockOf(after, 'keep')).toBe(blockOf(calls, 'keep'))
    expect(setBike(after, DEFAULT_BIKE).apply(after)).toEqual(calls)
  })

  it('rounds to the coarser step and says so', () => {
    const coarse = { ...DEFAULT_BIKE, id: 'coarse', name: 'coarse knob', stepsPerUnit: 2 }
    const command = setBike(calls, coarse)
    expect(blockOf(command.apply(calls), 'total').resistance).toEqual({ kind: 'total', from: 2, to: 3, aim: 2 })
    expect(told(command.label)).toBe('Changed the bike to coarse knob; resistance is rounded to half turns')
  })

  it('touches no block where the step is the same', () => {
    const other = { ...DEFAULT_BIKE, name: 'the back room' }
    expect(setBike(calls, other).apply(calls).sections).toBe(calls.sections)
    expect(setBike(calls, structuredClone(DEFAULT_BIKE)).apply(calls)).toBe(calls)
    expect(told(setBike(calls, other).label)).toBe('Changed the bike to the back room')
  })

  it('changes nothing for a bike the document cannot hold', () => {
    expect(setBike(calls, { ...DEFAULT_BIKE, base: 30 }).apply(calls)).toBe(calls)
  })
})
