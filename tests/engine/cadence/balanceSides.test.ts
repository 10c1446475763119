import { describe, expect, it } from 'vitest'
import { imbalanceOf } from '#engine/cadence/balanceSides.ts'
import { footAfter } from '#engine/cadence/trackFeet.ts'
import { computeRide } from '#engine/computeRide.ts'
import type { Move, Song } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'

// biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
const TURN_ABOUT = { then: 'alternate' } as const

const balanceOf = (move: Move, counts = 64, song: Partial<Song> = {}) => {
  const block = aBlock('b', { length: { counts }, posture: 'standing', move })
  return computeRide({ ...smallRide(), sections: [aSection('s', { song: aSong('m', song), lead: 'right', blocks: [block] })] }).balance
}

describe('accents', () => {
  it.each([
    [{ name: 'jump', counts: 8 }, 4],
    [{ name: 'jumps on 8', counts: 8 }, 4],
    [{ name: 'Jumps', counts: 4 }, 8],
    [{ name: 'travel-back', counts: 4 }, 16],
    [{ name: 'travel back', counts: 8 }, 8],
    [{ name: 'press', counts: 2 }, 32],
    [{ name: 'elbow presses', counts: 4 }, 16],
    [{ name: 'lean', counts: 16 }, 4],
    [{ name: 'side lean', counts: 4 }, 0],
    [{ name: 'shoulder roll', counts: 8 }, 0],
  ] as [Move, number][])('of %o over 64 counts: %d on the lead foot', (move, right) => {
    expect(balanceOf(move)).toMatchObject({ right, left: 0 })
  })

  it('of a move that alternates start on the side it names, which takes the odd one', () => {
    expect(balanceOf({ name: 'lean', counts: 4, side: 'left', ...TURN_ABOUT })).toMatchObject({ right: 8, left: 8 })
    expect(balanceOf({ name: 'lean', counts: 4, side: 'left', ...TURN_ABOUT }, 60)).toMatchObject({ right: 7, left: 8 })
    expect(balanceOf({ name: 'lean', counts: 4, side: 'right', ...TURN_ABOUT }, 60)).toMatchObject({ right: 8, left: 7 })
    expect(balanceOf({ name: 'lean', counts: 4, ...TURN_ABOUT })).toMatchObject({ right: 0, left: 0 })
  })

  it('go turn about where they lie an odd number of strikes apart', () => {
    expect(balanceOf({ name: 'travel-back', counts: 3 }, 63)).toMatchObject({ right: 11, left: 10 })
  })

  it('are counted out through beats over and missing', () => {
    // Eight counts apart; after the beat that is over each lands on the other foot.
    expect(balanceOf({ name: 'travel-back', counts: 8 }, 64, { grid: { ...gridOfTempo(120), odd: [[24, 1]] } })).toMatchObject({
      right: 3,
      left: 5,
    })
    expect(balanceOf({ name: 'travel-back', counts: 8 }, 64, { grid: { ...gridOfTempo(120), odd: [[24, 2]] } })).toMatchObject({
      right: 8,
      left: 0,
    })
  })

  it('of a hold are as long as the music has them on either side', () => {
    const grid = {
      anchors: [
        [0, 0],
        [16, 8],
        [32, 20],
      ] as [number, number][],
      beatsPerBar: 4 as const,
    }
    const { holdSeconds } = balanceOf({ name: 'twist hold', counts: 16, side: 'left', ...TURN_ABOUT }, 32, { grid, lengthSeconds: 20 })
    expect(holdSeconds).toEqual({ left: expect.closeTo(8, 9), right: expect.closeTo(12, 9) })
  })

  it('are spread as when every one is counted out', () => {
    for (const strikesPerBeat of [0.5, 1, 2] as const) {
      for (const counts of [1, 2, 3, 4, 7]) {
        for (let times = 1; times < 12; times++) {
          const sides = { right: 0, left: 0 }
          for (let i = 0; i < times; i++) {
            const foot = footAfter('right', i * counts * strikesPerBeat)
            if (foot) sides[foot]++
          }
          expect(balanceOf({ name: 'travel-back', counts }, times * counts, { strikesPerBeat })).toMatchObject(sides)
        }
      }
    }
  })
})

describe('balance', () => {
  it('is the difference over the sum, and says nothing below eight', () => {
    expect(imbalanceOf({ right: 16, left: 36 }, 8)).toBeCloseTo(0.385, 3)
    expect(imbalanceOf({ right: 4, left: 3 }, 8)).toBeNull()
    expect(imbalanceOf({ right: 4, left: 4 }, 8)).toBe(0)
  })

  it('counts the seconds of one-sided holds, and shares alternating ones out', () => {
    expect(balanceOf({ name: 'single-leg drill', counts: 64, side: 'left' }).holdSeconds).toEqual({ right: 0, left: 32 })
    // 40 counts in turns of sixteen: 16 right, 16 left, 8 right.
    expect(balanceOf({ name: 'lean hold', counts: 16, side: 'right', ...TURN_ABOUT }, 40).holdSeconds).toEqual({ right: 12, left: 8 })
    const block = aBlock('b', { ...inSeconds(30), move: { name: 'lean hold', counts: 8, side: 'left', ...TURN_ABOUT } })
    expect(computeRide({ ...smallRide(), sections: [aSection('s', { blocks: [block] })] }).balance.holdSeconds).toEqual({
      right: 15,
      left: 15,
    })
  })
})
