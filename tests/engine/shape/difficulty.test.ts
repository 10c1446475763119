import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { type DifficultyFigures, difficultyPoints } from '#engine/shape/difficulty.ts'
import { rankCorrelation } from '#engine/shape/rankCorrelation.ts'
import { strainAt } from '#engine/shape/strainCurve.ts'
import { wavesOf } from '#engine/shape/waves.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { told } from '#tests/support/told.ts'

const NOTHING: DifficultyFigures = {
  hardShare: 0,
  longestHard: 0,
  shortestRecovery: null,
  changesPerMinute: 0,
  fastestMove: null,
  longestStanding: 0,
  highestTurns: 0,
  cadenceOutside: 0,
  doubleTimeShare: 0,
}
/** Each figure at its full scale. */
const FULL: DifficultyFigures = {
  hardShare: 0.35,
  longestHard: 90,
  shortestRecovery: 0,
  changesPerMinute: 4,
  fastestMove: 2,
  longestStanding: 300,
  highestTurns: 4,
  cadenceOutside: 15,
  doubleTimeShare: 0.5,
}

/** Points of each figure at its full scale; common practice. */
const POINTS: Record<keyof DifficultyFigures, number> = {
  hardShare: 20,
  longestHard: 15,
  shortestRecovery: 15,
  changesPerMinute: 15,
  fastestMove: 10,
  longestStanding: 10,
  highestTurns: 5,
  cadenceOutside: 5,
  doubleTimeShare: 5,
}

const sum = (points: Record<string, number>) => Object.values(points).reduce((total, part) => total + part, 0)

describe('difficulty', () => {
  it('is 0 for nothing, 100 at the full scale of everything, and no more beyond it', () => {
    expect(sum(difficultyPoints(NOTHING))).toBe(0)
    expect(sum(difficultyPoints(FULL))).toBeCloseTo(100, 10)
    expect(sum(difficultyPoints({ ...FULL, longestHard: 900, hardShare: 1, fastestMove: 1 }))).toBeCloseTo(100, 10)
  })

  it('adds for each figure its weight and no other', () => {
    for (const part of Object.keys(FULL) as (keyof DifficultyFigures)[]) {
      const points = difficultyPoints({ ...NOTHING, [part]: FULL[part] })
      expect(points[part]).toBeCloseTo(POINTS[part], 10)
      expect(sum(points)).toBeCloseTo(points[part], 10)
    }
  })

  it('gives the two biggest reasons of a demo ride in words', () => {
    const { difficulty } = computeRide(demoRide('spark'))
    expect(difficulty.reasons.map(({ text }) => told(text))).toEqual(['22% of the time at hard effort', 'a recovery of 15 s'])
    expect(difficulty.level).toEqual({ beginner: 'above', mixed: 'inside', advanced: 'below' })
  })

  it('warns a beginner class, and every edit it offers makes the class easier', () => {
    const ride = { ...demoRide('spark'), level: 'beginner' as const }
    const before = computeRide(ride)
    const found = before.findings.find(({ rule }) => rule === 'difficultyForLevel')!
    expect(told(found.text)).toBe(
      'Difficulty 47 of 100; beginner classes usually stay at 30 or less. Mostly because of 22% of the time at hard effort and a recovery of 15 s.',
    )
    expect(found.proposed.map(({ label }) => told(label))).toEqual(['Plan 7 in “standing climb”', 'Extend “recover” by 4 eights'])
    for (const { command } of found.proposed)
      expect(computeRide(command.apply(ride)).difficulty.points).toBeLessThan(before.difficulty.points)
  })

  it('on any ride lies between 0 and 100, and its edits never make it harder', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 3, items: 5 }), (any) => {
        const ride = { ...any, level: 'beginner' as const }
        const report = computeRide(ride)
        expect(report.difficulty.points).toBeGreaterThanOrEqual(0)
        expect(report.difficulty.points).toBeLessThanOrEqual(100 + 1e-9)
        const found = report.findings.find(({ rule }) => rule === 'difficultyForLevel')
        for (const { command, label } of found?.proposed ?? []) {
          const changed = command.apply(ride)
          if (changed !== ride) expect(computeRide(changed).difficulty.points, told(label)).toBeLessThan(report.difficulty.points)
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe('shape', () => {
  it('reads the demo rides as they are drawn', () => {
    const ridge = computeRide(demoRide('ridge')).shape
    expect(ridge.name).toBe('two peaks')
    expect(told(ridge.sentence)).toBe('2 peaks, the last of the hardest efforts at 86% of the ride, the longest recovery at 51%.')
    expect(ridge.waves.map(({ value }) => value.toFixed(1))).toEqual(['7.6', '7.4'])
    const spark = computeRide(demoRide('spark')).shape
    expect(spark.lastPeak).toBeCloseTo((16 * 60 + 41) / (19 * 60 + 36), 2)
  })

  it('finds every peak that stands out, and only those', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 3, items: 6 }), (ride) => {
        const { strain } = computeRide(ride).curves
        const waves = wavesOf(strain)
        for (const { at, value, prominence } of waves) {
          expect(prominence).toBeGreaterThanOrEqual(2)
          expect(strainAt(strain, at)).toBeCloseTo(value, 9)
        }
        if (strain.maximum.value >= 2 && strain.pieces.length > 0)
          expect(waves.some(({ value }) => Math.abs(value - strain.maximum.value) < 1e-9)).toBe(true)
      }),
      { numRuns: 60 },
    )
  })

  it('correlates ranks as Spearman does', () => {
    expect(rankCorrelation([1, 2, 3, 4])).toBeCloseTo(1, 12)
    expect(rankCorrelation([4, 3, 2, 1])).toBeCloseTo(-1, 12)
    expect(rankCorrelation([5, 5, 5])).toBe(0)
    // Differences of ranks 1, 1, 0, 0: 1 − 6·2 / (4·15).
    expect(rankCorrelation([2, 1, 3, 4])).toBeCloseTo(0.8, 12)
  })
})
