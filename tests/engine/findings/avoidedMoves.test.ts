import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import type { Block, Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'
import { say } from '#words/said.ts'

const rideOf = (avoidMoves: string[], ...blocks: Block[]): Ride => ({
  ...smallRide(),
  avoidMoves,
  sections: [aSection('song', { song: aSong('first'), blocks })],
})
const foundIn = (ride: Ride) => computeRide(ride).findings.filter(({ rule }) => rule === 'avoidedMoves')

describe('moves to avoid', () => {
  it('are found under any common spelling, with a way to ride on', () => {
    const ride = rideOf(['Jumps'], aBlock('a', { move: { name: 'jump', counts: 8 }, terrain: 'jumps', posture: 'standing' }), aBlock('b'))
    const [finding, ...more] = foundIn(ride)
    expect(more).toEqual([])
    expect(finding).toMatchObject({
      blockId: 'a',
      text: say('checksRiding.avoidedMove', { block: say('names.quoted', { name: 'a' }), move: 'jump', instead: 'side lean' }),
      why: say('sources.avoidedMoves'),
    })
    const [without, instead] = finding!.proposed.map(({ command }) => command.apply(ride).sections[0]!.blocks[0])
    expect(without).not.toHaveProperty('move')
    expect(without).toMatchObject({ terrain: 'hill' })
    expect(instead).toMatchObject({ move: { name: 'side lean', counts: 8 }, terrain: 'hill' })
  })

  it('are not offered in place of one another', () => {
    const ride = rideOf(['jump', 'side lean', 'press'], aBlock('a', { move: { name: 'jump', counts: 8 }, posture: 'standing' }))
    expect(foundIn(ride)[0]!.proposed.map(({ label }) => told(label))).toEqual(['Leave out “jump”'])
  })

  it('name hovering and jumps as terrain too, and a set once', () => {
    const hover = aBlock('h', { posture: 'hovering' })
    const jumps = aBlock('j', { terrain: 'jumps' })
    const ride: Ride = rideOf(['hover', 'jump'])
    Object.assign(ride.sections[0]!, { blocks: [aSet('set', [hover, jumps])] })
    expect(foundIn(ride).map(({ blockId }) => blockId)).toEqual(['h', 'j'])
  })

  it('leave other blocks, and rides without such a list, alone', () => {
    const block = aBlock('a', { move: { name: 'jump', counts: 8 } })
    expect(foundIn(rideOf(['press'], block))).toEqual([])
    expect(foundIn({ ...rideOf([], block), avoidMoves: undefined })).toEqual([])
  })

  it('are gone, or fewer, after any repair, in a ride that opens again', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 2, items: 4 }), (ride) => {
        const picky = { ...ride, avoidMoves: ['jump', 'travel-back', 'press', 'hovering'] }
        for (const { id, amount, fixes } of foundIn(picky)) {
          for (const { label, command } of fixes) {
            const next = command.apply(picky)
            expect(next, told(label)).not.toBe(picky)
            expect(parseRide(next).ok).toBe(true)
            expect(foundIn(next).find((left) => left.id === id)?.amount ?? 0).toBeLessThan(amount!)
          }
        }
      }),
      { numRuns: 60 },
    )
  })
})
