import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { footAfter, otherFoot } from '#engine/cadence/trackFeet.ts'
import { computeRide } from '#engine/computeRide.ts'
import type { Block, Foot, Section, StrikesPerBeat } from '#plan/model.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'

const playedOf = (...sections: Section[]) => computeRide({ ...smallRide(), sections }).blocks
const counted = (counts: number, change: Partial<Block> = {}): Block => aBlock(`b${counts}`, { length: { counts }, ...change })
/** Feet on the one of each block of a section led by the right foot. */
const feet = (strikesPerBeat: StrikesPerBeat, blocks: Section['blocks'], lead: Foot | undefined = 'right') =>
  playedOf(aSection('s', { song: aSong('m', { strikesPerBeat, lengthSeconds: 3000 }), lead, blocks })).map(({ foot }) => foot)

describe('the foot on the one', () => {
  it('stays after eights at one strike a beat, and flips after an odd count', () => {
    expect(feet(1, [counted(64), counted(7), counted(8), counted(9), counted(8)])).toEqual(['right', 'right', 'left', 'left', 'right'])
  })

  it('flips at half time after counts of two mod four', () => {
    expect(feet(0.5, [counted(8), counted(2), counted(4), counted(6), counted(8)])).toEqual(['right', 'right', 'left', 'left', 'right'])
  })

  it('never flips in double time', () => {
    expect(feet(2, [counted(7), counted(9), counted(2), counted(1)])).toEqual(['right', 'right', 'right', 'right'])
  })

  it('is none where strikes end between two beats, until they meet the beat again', () => {
    expect(feet(0.5, [counted(7), counted(8), counted(1), counted(8)])).toEqual(['right', null, null, 'right'])
  })

  it('is none off the beat and with legs still, and open after it until it is named', () => {
    const blocks = [
      counted(8),
      counted(8, { strikesPerBeat: null }),
      counted(8),
      counted(16, { lead: 'left' }),
      counted(8, { cadence: 'legsStill' }),
      counted(8),
    ]
    expect(feet(1, blocks)).toEqual(['right', null, null, 'left', null, null])
  })

  it('takes strikes for whole to a millionth, which is what seconds make of counts, and no further', () => {
    for (const whole of [0, 1, 2, 3, 64, 127]) {
      const foot = whole % 2 === 0 ? 'right' : 'left'
      for (const off of [-0.9e-6, 0, 0.9e-6]) expect(footAfter('right', whole + off), `${whole} + ${off}`).toBe(foot)
      for (const off of [-1.1e-6, 1.1e-6, 0.5, -0.5]) expect(footAfter('right', whole + off), `${whole} + ${off}`).toBeNull()
    }
    expect(footAfter('left', 5)).toBe('right')
    // A third of seven eights and the rest of them: 56 counts, but for the last digits.
    expect(feet(1, [counted(56 / 3), counted(56 - 56 / 3 + 5e-7), counted(8)])).toEqual(['right', null, 'right'])
  })

  it('flips over a set only when rounds times strikes is odd', () => {
    const set = (rounds: number, counts: number) => [aSet('set', [counted(counts)], { rounds }), counted(64)]
    expect(feet(1, set(3, 7)).at(-1)).toBe('left')
    expect(feet(1, set(2, 7)).at(-1)).toBe('right')
    expect(feet(1, set(3, 8)).at(-1)).toBe('right')
  })

  it('is swapped and named by blocks, and spoken where it is not where it would fall', () => {
    const blocks = [
      counted(8),
      counted(8, { lead: 'swap' }),
      counted(8, { lead: 'left' }),
      counted(8, { lead: 'right' }),
      counted(8, { lead: 'keep' }),
    ]
    const played = playedOf(aSection('s', { song: aSong('m'), lead: 'right', blocks }))
    expect(played.map(({ foot, footSpoken }) => [foot, footSpoken])).toEqual([
      ['right', true],
      ['left', true],
      ['left', false],
      ['right', true],
      ['right', false],
    ])
  })

  it('is set anew by every section, and open where nobody sets it', () => {
    const song = aSong('m')
    const played = playedOf(
      aSection('a', { song, lead: 'left', blocks: [counted(7)] }),
      aSection('b', { song, lead: 'left', blocks: [counted(8)] }),
      aSection('c', { song, blocks: [counted(8)] }),
    )
    expect(played.map(({ foot }) => foot)).toEqual(['left', 'left', null])
  })

  it('is the one that strikes there when every strike is counted out', () => {
    const block = fc.record({ counts: fc.integer({ min: 1, max: 40 }), strikesPerBeat: fc.constantFrom<0.5 | 1 | 2>(0.5, 1, 2) })
    fc.assert(
      fc.property(fc.array(block, { minLength: 1, maxLength: 12 }), (lengths) => {
        const blocks = lengths.map(({ counts, strikesPerBeat }, i) => aBlock(`b${i}`, { length: { counts }, strikesPerBeat }))
        expect(feet(1, blocks)).toEqual(countedOut(lengths))
      }),
    )
  })
})

/** Every half beat in turn: strikes fall on multiples of 1 ÷ strikes from the section's one, right foot first. */
function countedOut(lengths: { counts: number; strikesPerBeat: number }[]): (Foot | null)[] {
  let foot: Foot = 'right'
  // Half strikes since the last one that met the beat.
  let owed = 0
  return lengths.map(({ counts, strikesPerBeat }) => {
    const here = owed === 0 ? foot : null
    for (let beat = 0; beat < counts; beat++) {
      for (let half = 0; half < strikesPerBeat * 2; half++) {
        owed = (owed + 1) % 2
        if (owed === 0) foot = otherFoot(foot)
      }
    }
    return here
  })
}
