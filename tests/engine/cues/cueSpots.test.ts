import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { atSpot, cueSpots, nextSpot, spotOf } from '#engine/cues/cueSpots.ts'
import { startLead } from '#plan/cueStart.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const rideOf = (timed: boolean): Ride => ({
  ...smallRide(),
  briefingSeconds: 0,
  sections: [
    aSection('s', {
      ...(!timed && { song: aSong('tune') }),
      blocks: timed ? [aBlock('a', inSeconds(60)), aBlock('b', inSeconds(60))] : [aBlock('a'), aBlock('b')],
    }),
  ],
})
const spots = (ride: Ride, index: number) => cueSpots(ride, computeRide(ride), index)
const cue = (moment: Cue['moment'], lead: Cue['lead']): Cue => ({ id: 'c', moment, lead, text: 'Now.' })

describe('the moments of a block', () => {
  it('go from before its change to its end, each with its time', () => {
    expect(spots(rideOf(false), 1).map(({ name, at }) => [name, at])).toEqual([
      ['preview', expect.any(Number)],
      ['before', 28],
      ['countIn', 32],
      ['change', 32],
      ['start', 32],
      ['middle', 48],
      ['lastTwo', 56],
      ['lastOne', 60],
      ['end', 64],
    ])
  })

  it('begin with the change where the class begins, and go by seconds without music', () => {
    expect(spots(rideOf(false), 0).map(({ name }) => name)).toEqual(['change', 'start', 'middle', 'lastTwo', 'lastOne', 'end'])
    expect(
      spots(rideOf(true), 1)
        .filter(({ moment }) => moment === 'form')
        .map(({ name, lead }) => [name, lead]),
    ).toEqual([
      ['start', startLead('seconds')],
      ['middle', { seconds: 30 }],
      ['lastOne', { seconds: 10 }],
      ['end', { seconds: 0 }],
    ])
  })

  it('are gone through one by one, and from anywhere between them', () => {
    const all = spots(rideOf(false), 1)
    const before = cue('announce', { counts: 8 })
    expect(spotOf(all, before)?.name).toBe('before')
    expect(nextSpot(all, before, 28, 1).name).toBe('countIn')
    expect(nextSpot(all, cue('form', { counts: 0 }), 64, 1).name).toBe('end')
    const byHand = cue('form', { counts: 20 })
    expect(spotOf(all, byHand)).toBeUndefined()
    expect(nextSpot(all, byHand, 54, 1).name).toBe('lastTwo')
    expect(nextSpot(all, byHand, 54, -1).name).toBe('middle')
  })

  it('keep a story a story inside the block, and give a count-in its count', () => {
    const ride = rideOf(false)
    const named = (name: string) => spots(ride, 1).find((spot) => spot.name === name)!
    expect(atSpot(ride, cue('story', { counts: 3 }), named('middle'))).toMatchObject({ moment: 'story', lead: { counts: 32 } })
    expect(atSpot(ride, cue('form', { counts: 3 }), named('countIn'))).toMatchObject({ moment: 'countIn', count: 4 })
    expect(atSpot(ride, { ...cue('countIn', { counts: 0 }), count: 8 }, named('end'))).not.toHaveProperty('count')
  })

  it('stand in the order of time in any ride, and a cue put at one of them is found there', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const report = computeRide(ride)
        for (const { index, from, to } of report.blocks) {
          if (to <= from) continue
          const all = cueSpots(ride, report, index)
          const inside = all.filter(({ moment }) => moment === 'form').map(({ at }) => at)
          expect(inside).toEqual(inside.toSorted((a, b) => a - b))
          for (const spot of all) expect(spotOf(all, atSpot(ride, cue('form', { counts: 3 }), spot))?.name).toBe(spot.name)
        }
      }),
      { numRuns: 60 },
    )
  })
})
