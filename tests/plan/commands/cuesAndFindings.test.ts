import { describe, expect, it } from 'vitest'
import { addCues } from '#plan/commands/addCues.ts'
import { bringBack, putAside } from '#plan/commands/putAside.ts'
import { renameMove } from '#plan/commands/renameMove.ts'
import { setBike } from '#plan/commands/setBike.ts'
import { setDatum } from '#plan/commands/setDatum.ts'
import type { Cue } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const cue = (id: string): Cue => ({ id, moment: 'form', lead: { counts: 8 }, text: 'Light hands.' })
const block = (ride: ReturnType<typeof smallRide>, id: string) => findBlock(ride, id)!.block

describe('addCues', () => {
  it('adds each to its block after those it has, as one change, and leaves the rest alone', () => {
    const ride = {
      ...smallRide(),
      sections: [
        aSection('one', { song: aSong('tune'), blocks: [aBlock('a', { cues: [cue('own')] }), aBlock('b')] }),
        aSection('two', { song: aSong('other'), blocks: [aBlock('c')] }),
      ],
    }
    const command = addCues([
      { blockId: 'a', cue: cue('x') },
      { blockId: 'b', cue: cue('y') },
      { blockId: 'nobody', cue: cue('z') },
    ])
    const next = command.apply(ride)
    expect(block(next, 'a').cues.map(({ id }) => id)).toEqual(['own', 'x'])
    expect(block(next, 'b').cues.map(({ id }) => id)).toEqual(['y'])
    expect(next.sections[1]).toBe(ride.sections[1])
    expect(told(command.label)).toBe('Added 3 cues')
    expect(addCues([]).apply(ride)).toBe(ride)
  })
})

describe('putAside and bringBack', () => {
  it('keep a list of ids, each once, and leave no empty list behind', () => {
    const ride = smallRide()
    const one = putAside(['water:ride']).apply(ride)
    expect(one.setAside).toEqual(['water:ride'])
    expect(putAside(['water:ride']).apply(one)).toBe(one)
    expect(bringBack('other:ride').apply(one)).toBe(one)
    expect(bringBack('water:ride').apply(ride)).toBe(ride)
    const back = bringBack('water:ride').apply(one)
    expect(back).toEqual(ride)
    expect(back).not.toHaveProperty('setAside')
  })

  it('take several at once, and only those that are not aside yet', () => {
    const one = putAside(['water:ride']).apply(smallRide())
    const all = putAside(['hearing:ride', 'water:ride', 'newcomers:ride']).apply(one)
    expect(all.setAside).toEqual(['water:ride', 'hearing:ride', 'newcomers:ride'])
    expect(told(putAside(['hearing:ride', 'water:ride']).label)).toBe('Hid 2 checks')
  })

  it('let go of the oldest when the list is full', () => {
    const full = { ...smallRide(), setAside: Array.from({ length: 500 }, (_, i) => `rule:${i}`) }
    const next = putAside(['new:ride']).apply(full)
    expect(next.setAside).toHaveLength(500)
    expect([next.setAside![0], next.setAside!.at(-1)]).toEqual(['rule:1', 'new:ride'])
  })
})

describe('renameMove', () => {
  it('renames a move wherever it is shown, whatever its capitals', () => {
    const move = (name: string) => ({ move: { name, counts: 8 } })
    const ride = {
      ...smallRide(),
      sections: [
        aSection('one', {
          song: aSong('tune'),
          blocks: [aBlock('a', move('Sway')), aBlock('b', move('sway ')), aBlock('c', move('jump')), aBlock('d')],
        }),
      ],
    }
    const command = renameMove(ride, { from: 'sway', to: 'swing' })
    expect(told(command.label)).toBe('Renamed sway to swing in 2 blocks')
    expect(['a', 'b', 'c', 'd'].map((id) => block(command.apply(ride), id).move?.name)).toEqual(['swing', 'swing', 'jump', undefined])
  })
})

describe('the total a leader rides', () => {
  it('is read anew with the datum and the bike, like every other total', () => {
    const ride = {
      ...smallRide(),
      datum: 'base' as const,
      sections: [aSection('one', { song: aSong('tune'), blocks: [aBlock('a', { ownTotal: 6 })] })],
    }
    const base = Math.round(ride.bike.base * ride.bike.stepsPerUnit)
    expect(block(setDatum('loose').apply(ride), 'a').ownTotal).toBe(6 + base)
    const finer = setBike(ride, { ...ride.bike, stepsPerUnit: ride.bike.stepsPerUnit * 2 }).apply(ride)
    expect(block(finer, 'a').ownTotal).toBe(12)
  })
})
