import fc from 'fast-check'
import type { Bike } from '#plan/model.ts'

/** Random bikes whose calibration rises at every point, from a knob of few steps to a fine scale. */
export const arbitraryCalibratedBike: fc.Arbitrary<Bike> = fc
  .record({
    stepsPerUnit: fc.constantFrom(1, 2, 4, 10),
    brake: fc.constantFrom('friction' as const, 'magnetic' as const),
    unit: fc.constantFrom('turn', 'level', 'gear'),
    referenceRpm: fc.integer({ min: 50, max: 110 }),
    start: fc.integer({ min: 0, max: 5 }),
    rises: fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 5, max: 90 })), { minLength: 2, maxLength: 7 }),
    first: fc.integer({ min: 5, max: 40 }),
  })
  .map(({ start, rises, first, ...scale }) => {
    const points: Bike['points'][number][] = [[start, first]]
    for (const [wider, stronger] of rises) {
      const [setting, watts] = points.at(-1)!
      points.push([setting + wider, watts + stronger])
    }
    return { id: 'bike', name: 'bike', ...scale, max: points.at(-1)![0] + 2, base: start, points }
  })
