import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { easingsOf } from '#engine/easings.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const measure = (ride: Parameters<typeof computeRide>[0]) => computeRide(ride).measures

it('measures a class from its first block to the end of its last section, briefing and clear-up left out', () => {
  const blocks = [
    aBlock('a', { ...inSeconds(100), effort: { from: 3, to: 3 } }),
    aBlock('ramp', { ...inSeconds(40), effort: { from: 5, to: 9 } }),
    aBlock('ease', { ...inSeconds(60), effort: { from: 3, to: 3 } }),
  ]
  const ride = { ...smallRide(), briefingSeconds: 120, clearUpSeconds: 30, sections: [aSection('s', { blocks })] }
  expect(measure(ride)).toEqual({
    warmUp: 120,
    coolDown: 60,
    riding: 200,
    firstHard: 250,
    longestHard: 10,
    lastHardest: 250,
    longestStanding: 0,
    peak: { effort: 9, at: 260 },
  })
})

it('has nothing to measure in a ride without work, or without blocks', () => {
  expect(measure({ ...smallRide(), sections: [] })).toMatchObject({ warmUp: null, firstHard: null, peak: null, riding: 0 })
  expect(measure({ ...smallRide(), sections: [aSection('s', { blocks: [aBlock('a', inSeconds(60))] })] })).toMatchObject({
    warmUp: null,
    firstHard: null,
  })
})

it('finds in the 45-minute demo ride what its plan says: longest standing 44 s, five easy minutes and more at the end', () => {
  const measures = measure(demoRide('ridge'))
  expect(measures.longestStanding).toBeCloseTo(44.3, 1)
  expect(measures.coolDown).toBeGreaterThan(300)
  expect(measures.firstHard).toBeGreaterThan(18 * 60)
})

describe('what makes a class hard', () => {
  it('is named with the edit that moves it, and where the difficulty stands after it', () => {
    for (const name of ['spark', 'ridge'] as const) {
      const ride = demoRide(name)
      const report = computeRide(ride)
      const easings = easingsOf(ride, report)
      expect(easings.map(({ part }) => part)).toEqual(report.difficulty.reasons.map(({ part }) => part))
      const edits = easings.flatMap(({ edit }) => (edit ? [edit] : []))
      expect(edits.length).toBeGreaterThan(0)
      for (const { fix, points } of edits) {
        expect(points).toBeLessThan(report.difficulty.points)
        expect(computeRide(fix.command.apply(ride)).difficulty.points).toBe(points)
      }
    }
  })

  it('is nothing in a ride without blocks', () => {
    const empty = { ...smallRide(), sections: [] }
    expect(easingsOf(empty, computeRide(empty))).toEqual([])
  })
})
