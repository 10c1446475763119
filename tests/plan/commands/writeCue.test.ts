import { describe, expect, it } from 'vitest'
import { removeCue, writeCue } from '#plan/commands/writeCue.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'

const cue = (id: string, text: string, change: Partial<Cue> = {}): Cue => ({ id, moment: 'form', lead: { counts: 8 }, text, ...change })
const ride: Ride = {
  ...smallRide(),
  sections: [
    aSection('s', {
      song: aSong('tune'),
      blocks: [
        aBlock('a', { cues: [cue('one', 'Long back.'), cue('in', '', { moment: 'countIn', count: 4, lead: { counts: 0 } })] }),
        aSet('set', [aBlock('p')]),
      ],
    }),
  ],
}
const cuesOf = (after: Ride, id = 'a') => findBlock(after, id)!.block.cues.map(({ id: own, text }) => [own, text])
const write = (written: Cue, blockId = 'a') => writeCue(ride, { blockId, cue: written })

describe('a cue that is written', () => {
  it('comes after the others of its block, of a part of a set too, without spaces around it', () => {
    expect(cuesOf(write(cue('new', ' Now. ')).apply(ride))).toEqual([
      ['one', 'Long back.'],
      ['in', ''],
      ['new', 'Now.'],
    ])
    expect(cuesOf(write(cue('new', 'Now.'), 'p').apply(ride), 'p')).toEqual([['new', 'Now.']])
    expect(write(cue('new', ' ')).apply(ride)).toBe(ride)
  })

  it('takes the place of the one that is there, and goes with its words', () => {
    expect(cuesOf(write(cue('one', 'Tall.')).apply(ride))[0]).toEqual(['one', 'Tall.'])
    expect(cuesOf(write(cue('one', '')).apply(ride))).toEqual([['in', '']])
    expect(write(cue('one', 'Long back.')).apply(ride)).toBe(ride)
  })

  it('stays as a count-in without words until it is taken out', () => {
    const countIn = cue('in', '', { moment: 'countIn', count: 8, lead: { counts: 0 } })
    expect(findBlock(write(countIn).apply(ride), 'a')!.block.cues[1]).toEqual(countIn)
    expect(cuesOf(removeCue(ride, { blockId: 'a', cueId: 'in' }).apply(ride))).toEqual([['one', 'Long back.']])
    expect(removeCue(ride, { blockId: 'a', cueId: 'nobody' }).apply(ride)).toBe(ride)
  })
})
