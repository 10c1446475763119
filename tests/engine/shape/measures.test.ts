import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { EffortLine } from '#engine/recovery/effortLines.ts'
import { easyTail, effortCentre, effortSeconds, workAndEase } from '#engine/shape/effortMeasures.ts'
import type { Block, Section } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const line = (from: number, to: number, start: number, end = start): EffortLine => ({ block: 0, from, to, start, end, allOut: false })

describe('measures of effort', () => {
  it('take ramps exactly', () => {
    const lines = [line(0, 60, 0, 10), line(60, 120, 10, 0)]
    expect(effortSeconds(lines)).toBe(600)
    expect(effortCentre(lines, 0, 120)).toBeCloseTo(0.5, 12)
    // Effort 7 and more for the last and first 18 s, 4 and less for the first and last 24 s.
    expect(workAndEase(lines, 7, 4)).toEqual({ workSeconds: 36, easySeconds: 48, ratio: 0.75 })
    expect(easyTail(lines, 2)).toBeCloseTo(12, 12)
  })

  it('put the centre of a rising ramp at two thirds', () => {
    expect(effortCentre([line(0, 90, 0, 10)], 0, 90)).toBeCloseTo(2 / 3, 12)
    expect(effortCentre([line(0, 90, 0)], 0, 90)).toBeNull()
  })

  it('count the tail over lead-ins and stop at the first harder moment', () => {
    expect(easyTail([line(0, 60, 2), line(60, 90, 4), line(92, 152, 2), line(154, 200, 1)], 2)).toBe(106)
    expect(easyTail([line(0, 60, 6, 0)], 2)).toBeCloseTo(20, 12)
  })

  it('agree with the mean and load of any ride', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const { overall, spans, blocks } = computeRide(ride)
        const seconds = spans.filter(({ kind }) => kind === 'block').reduce((sum, { from, to }) => sum + to - from, 0)
        expect(overall.sessionLoad).toBeCloseTo((overall.meanEffort * seconds) / 60, 6)
        expect(overall.workShare).toBeLessThanOrEqual(1 + 1e-9)
        if (overall.centroid !== null) expect(overall.centroid).toBeGreaterThanOrEqual(-1e-9)
        const highest = Math.max(0, ...blocks.map(({ ledger }) => ledger.after.nominal))
        expect(overall.highestTotal).toBeGreaterThanOrEqual(highest === 0 ? overall.highestTotal : highest)
      }),
    )
  })
})

describe('standing', () => {
  const standing = (seconds: number, change: Partial<Block> = {}) =>
    aBlock(`b${seconds}`, { ...inSeconds(seconds), posture: 'standing', ...change })
  const longest = (...sections: Section[]) => computeRide({ ...smallRide(), sections }).overall.longestStanding

  it('runs on over blocks and the lead-in that carries it', () => {
    const first = aSection('a', { blocks: [aBlock('sit', inSeconds(30)), standing(40)] })
    const second = aSection('b', { leadInSeconds: 3, blocks: [standing(20), aBlock('sit2', inSeconds(30)), standing(50)] })
    expect(longest(first, second)).toBe(63)
  })

  it('is broken by jumps and counts hovering', () => {
    const jumps = standing(45, { move: { name: 'jump', counts: 8 } })
    expect(longest(aSection('a', { blocks: [standing(40), jumps, standing(30, { posture: 'hovering' })] }))).toBe(40)
  })
})

describe('the intent curve', () => {
  it('steps at changes, runs on through ramps, and breaks at lead-ins', () => {
    const level = (seconds: number, from: number, to = from) =>
      aBlock(`e${seconds}${from}`, { ...inSeconds(seconds), effort: { from, to } })
    const sections = [
      aSection('a', { blocks: [level(10, 3), level(20, 3, 6), level(30, 5)] }),
      aSection('b', { leadInSeconds: 2, blocks: [level(10, 5)] }),
    ]
    expect(computeRide({ ...smallRide(), sections }).curves.intent).toEqual([
      [
        { at: 0, value: 3 },
        { at: 10, value: 3 },
        { at: 30, value: 6 },
        { at: 30, value: 5 },
        { at: 60, value: 5 },
      ],
      [
        { at: 62, value: 5 },
        { at: 72, value: 5 },
      ],
    ])
  })
})
