import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { calibrateByFeel, calibrateByWatts } from '#engine/demand/calibrateBike.ts'
import { calibrationOf, reachOf, referenceWatts, wattsAt } from '#engine/demand/calibration.ts'
import { DEFAULT_BIKE, DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Bike } from '#plan/model.ts'

const bike = { ...DEFAULT_BIKE, points: [] as Bike['points'] }

describe('calibrating a bike', () => {
  it('finds points and brake again from what the console would show', () => {
    for (const brake of ['friction', 'magnetic'] as const) {
      const real = { ...DEFAULT_BIKE, brake }
      const readings = DEFAULT_BIKE.points.flatMap(([setting]) =>
        [60, 90].map((rpm) => ({ setting, rpm, watts: wattsAt(calibrationOf(real), setting, rpm) })),
      )
      const found = calibrateByWatts(readings, { ...bike, brake: brake === 'friction' ? 'magnetic' : 'friction' })
      expect(found).toMatchObject({ ok: true, brake, points: DEFAULT_BIKE.points })
      if (found.ok) expect(found.exponent).toBeCloseTo(brake === 'friction' ? 1 : 2, 10)
    }
  })

  it('takes the brake as given where no setting was read at two cadences', () => {
    const found = calibrateByWatts(
      [
        { setting: 2, rpm: 80, watts: 50 },
        { setting: 4, rpm: 80, watts: 170 },
      ],
      bike,
    )
    expect(found).toEqual({
      ok: true,
      brake: 'friction',
      exponent: null,
      points: [
        [2, 50],
        [4, 170],
      ],
    })
  })

  it('turns feelings into the watts that cost this rider as much', () => {
    const regular = DEFAULT_RIDERS[1]!
    const found = calibrateByFeel(
      [
        { setting: 2, rpm: 80, effort: 2 },
        { setting: 4, rpm: 80, effort: 6 },
      ],
      regular,
      bike,
    )
    // Effort 2 is 30 % of a reserve of 36.5: 14.45 mL/kg/min, 48.3 W; effort 6 is 67.5 %: 28.14 mL/kg/min, 137 W.
    expect(found).toMatchObject({
      ok: true,
      points: [
        [2, 48.3],
        [4, 137],
      ],
    })
  })

  it.each([
    [[{ setting: 2, rpm: 80, watts: 50 }], 'Read at least two settings.'],
    [
      [
        { setting: 2, rpm: 0, watts: 50 },
        { setting: 3, rpm: 80, watts: 60 },
      ],
      'A reading needs a cadence above 0 and watts from 0 on.',
    ],
    [
      [
        { setting: 2, rpm: 80, watts: 90 },
        { setting: 3, rpm: 80, watts: 60 },
      ],
      '3 turns came out lighter (60 W) than 2 (90 W); read these two again.',
    ],
  ])('refuses what makes no curve: %j', (readings, problem) => {
    expect(calibrateByWatts(readings, bike)).toEqual({ ok: false, problem })
  })
})

describe('a calibration curve', () => {
  const arbitraryPoints = fc
    .array(fc.tuple(fc.double({ min: 0.1, max: 4, noNaN: true }), fc.double({ min: 0, max: 90, noNaN: true })), {
      minLength: 1,
      maxLength: 9,
    })
    .map((rises) => {
      const points: [number, number][] = [[0, 5]]
      for (const [setting, watts] of rises) points.push([points.at(-1)![0] + setting, points.at(-1)![1] + watts])
      return points
    })

  it('passes through its points, never falls, and says where it ends', () => {
    fc.assert(
      fc.property(arbitraryPoints, (points) => {
        const calibration = calibrationOf({ ...DEFAULT_BIKE, points })
        for (const [setting, watts] of points) expect(referenceWatts(calibration, setting)).toBeCloseTo(watts, 9)
        const end = points.at(-1)![0]
        let before = Number.NEGATIVE_INFINITY
        for (let i = -20; i <= 220; i++) {
          const watts = referenceWatts(calibration, (end * i) / 200)
          expect(watts).toBeGreaterThanOrEqual(before - 1e-9)
          before = watts
        }
        expect([reachOf(calibration, -0.01), reachOf(calibration, end / 2), reachOf(calibration, end + 0.01)]).toEqual([
          'below',
          'calibrated',
          'above',
        ])
        expect(referenceWatts(calibration, end + 5)).toBe(points.at(-1)![1])
      }),
    )
  })
})
