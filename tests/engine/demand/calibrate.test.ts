import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { calibrateByFeel, type FeelRound } from '#engine/demand/calibrateByFeel.ts'
import { calibrateByWatts, settingsToTry } from '#engine/demand/calibrateByWatts.ts'
import { calibrationOf, referenceWatts, wattsAt } from '#engine/demand/calibration.ts'
import { effortOfFeel, FEEL_LADDER, wattsForEffort } from '#engine/demand/feelLadder.ts'
import { OXYGEN } from '#engine/demand/oxygenCost.ts'
import { risingPoints } from '#engine/demand/risingPoints.ts'
import { settingForWatts } from '#engine/demand/settingForWatts.ts'
import { DEFAULT_BIKE, DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Bike } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import { effortOfReserve } from '#tests/support/reference/effortOfReserve.ts'
import { oxygenUptake } from '#tests/support/reference/oxygenCost.ts'

const [NEW, REGULAR, STRONG] = DEFAULT_RIDERS as [Rider, Rider, Rider]

/** Bikes whose points rise steeply enough for every feel to have its own place, as real ones do. */
const arbitraryBike: fc.Arbitrary<Bike> = fc
  .record({
    brake: fc.constantFrom('friction' as const, 'magnetic' as const),
    referenceRpm: fc.integer({ min: 60, max: 100 }),
    stepsPerUnit: fc.constantFrom(1, 2, 4, 8),
    first: fc.integer({ min: 2, max: 15 }),
    rises: fc.array(fc.integer({ min: 20, max: 80 }), { minLength: 10, maxLength: 14 }),
  })
  .map(({ first, rises, ...rest }) => {
    const points = [first, ...rises].map((_, i): [number, number] => [i, first + rises.slice(0, i).reduce((sum, rise) => sum + rise, 0)])
    return { ...DEFAULT_BIKE, ...rest, base: 1, max: points.length - 1, points }
  })

const arbitraryRider = fc
  .record({ massKg: fc.integer({ min: 50, max: 100 }), vo2max: fc.integer({ min: 25, max: 60 }) })
  .map((body): Rider => ({ ...REGULAR, ...body }))

/** What a rider who feels exactly what the model says answers on a bike at a cadence. */
const exactly = (bike: Bike, rider: Rider, rpm: number): FeelRound => ({
  rpm,
  found: FEEL_LADDER.flatMap(({ feel, effort }) => {
    const setting = settingForWatts(calibrationOf(bike), wattsForEffort(effort, rider, rpm), rpm)
    return setting === null ? [] : [{ feel, setting }]
  }),
})

/** The same to the nearest step of the knob. */
const inSteps = ({ rpm, found }: FeelRound, { stepsPerUnit }: Bike): FeelRound => ({
  rpm,
  found: found.map(({ feel, setting }) => ({ feel, setting: Math.round(setting * stepsPerUnit) / stepsPerUnit })),
})

describe('a feel', () => {
  it('is the power at which the engine says its effort', () => {
    for (const rider of DEFAULT_RIDERS) {
      for (const { feel } of FEEL_LADDER) {
        const uptake = oxygenUptake(wattsForEffort(effortOfFeel(feel), rider), rider.massKg)
        expect(effortOfReserve((uptake - OXYGEN.rest) / (rider.vo2max - OXYGEN.rest))).toBeCloseTo(effortOfFeel(feel), 9)
      }
    }
  })

  it('climbs', () => {
    const watts = FEEL_LADDER.map(({ effort }) => wattsForEffort(effort, NEW))
    expect(watts).toEqual([...watts].sort((a, b) => a - b))
    expect(wattsForEffort(0, NEW)).toBe(0)
  })
})

describe('the setting for a power', () => {
  it('gives that power', () => {
    fc.assert(
      fc.property(arbitraryBike, fc.integer({ min: 50, max: 110 }), fc.double({ min: 0, max: 1, noNaN: true }), (bike, rpm, share) => {
        const calibration = calibrationOf(bike)
        const watts = wattsAt(calibration, share * bike.max, rpm)
        expect(wattsAt(calibration, settingForWatts(calibration, watts, rpm)!, rpm)).toBeCloseTo(watts, 6)
      }),
    )
  })

  it('is the outermost one for the outermost power, at any cadence', () => {
    const points = [
      [0, 2],
      [1, 73],
      [6, 363],
      [12, 665],
    ] satisfies [number, number][]
    const calibration = calibrationOf({ ...DEFAULT_BIKE, max: 12, base: 1, referenceRpm: 74, points })
    for (let rpm = 40; rpm <= 130; rpm++) {
      expect(settingForWatts(calibration, wattsAt(calibration, 12, rpm), rpm)).toBeCloseTo(12, 6)
      expect(settingForWatts(calibration, wattsAt(calibration, 0, rpm), rpm)).toBeCloseTo(0, 6)
    }
  })

  it('is none beyond the calibrated points', () => {
    const calibration = calibrationOf(DEFAULT_BIKE)
    expect(settingForWatts(calibration, 7.9)).toBeNull()
    expect(settingForWatts(calibration, 8)).toBe(0)
    expect(settingForWatts(calibration, 290)).toBeCloseTo(6, 9)
    expect(settingForWatts(calibration, 290.1)).toBeNull()
  })
})

describe('readings', () => {
  it('of one setting are averaged, and those that fall share their mean', () => {
    const readings = [
      [3, 90],
      [1, 20],
      [1, 30],
      [2, 100],
    ].map(([setting, watts]) => ({ setting: setting!, watts: watts! }))
    expect(risingPoints(readings)).toEqual([
      [1, 25],
      [2, 95],
      [3, 95],
    ])
  })

  it('become the nearest rising points, whatever they are', () => {
    const reading = fc.record({ setting: fc.integer({ min: 0, max: 8 }), watts: fc.integer({ min: 0, max: 400 }) })
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 20 }), fc.integer({ min: -50, max: 50 }), (readings, off) => {
        const points = risingPoints(readings)
        const watts = new Map(points)
        const distance = (of: (setting: number) => number) =>
          readings.reduce((sum, { setting, watts: w }) => sum + (of(setting) - w) ** 2, 0)
        points.slice(1).forEach(([setting, w], i) => {
          expect(setting).toBeGreaterThan(points[i]![0])
          expect(w).toBeGreaterThanOrEqual(points[i]![1] - 1e-9)
        })
        // Any other rising line is further off: the same moved, flattened to its mean, or the next one down.
        const best = distance((setting) => watts.get(setting)!)
        const flat = readings.reduce((sum, { watts: w }) => sum + w, 0) / readings.length
        expect(best).toBeLessThanOrEqual(distance((setting) => watts.get(setting)! + off) + 1e-6)
        expect(best).toBeLessThanOrEqual(distance(() => flat) + 1e-6)
      }),
    )
  })
})

describe('calibrating by watts', () => {
  it('recovers a bike from what its console shows, in any order', () => {
    fc.assert(
      fc.property(arbitraryBike, fc.integer({ min: 60, max: 100 }), fc.integer({ min: 0, max: 20 }), (bike, rpm, turn) => {
        const shown = bike.points.map(([setting]) => ({ setting, watts: wattsAt(calibrationOf(bike), setting, rpm) }))
        const result = calibrateByWatts({ ...bike, points: DEFAULT_BIKE.points }, rpm, [...shown.slice(turn), ...shown.slice(0, turn)])
        expect(result.ok && result.bike.referenceRpm).toBe(rpm)
        expect(result.ok && result.bike.points).toEqual(shown.map(({ setting, watts }) => [setting, Math.round(watts)]))
      }),
    )
  })

  it('carries the old curve on in proportion where nothing was tried', () => {
    const result = calibrateByWatts(DEFAULT_BIKE, 80, [
      { setting: 2, watts: 60 },
      { setting: 4, watts: 187 },
    ])
    // 8 and 22 by 60 ÷ 50; 230 and 290 by 187 ÷ 170; the untried 3 between two readings is left to the curve.
    expect(result).toMatchObject({ ok: true, carried: [0, 1, 5, 6] })
    expect(result.ok && result.bike.points).toEqual([
      [0, 10],
      [1, 26],
      [2, 60],
      [4, 187],
      [5, 253],
      [6, 319],
    ])
  })

  it('asks again where a higher setting showed fewer watts, and needs two settings', () => {
    const readings = [
      { setting: 3, watts: 110 },
      { setting: 2, watts: 120 },
    ]
    expect(calibrateByWatts(DEFAULT_BIKE, 80, readings)).toEqual({ ok: false, reason: 'falls', lower: readings[1], upper: readings[0] })
    expect(calibrateByWatts(DEFAULT_BIKE, 80, [readings[0]!, readings[0]!])).toEqual({ ok: false, reason: 'tooFew' })
  })

  it('starts at base, goes up, and tries what is under base last', () => {
    expect(settingsToTry(DEFAULT_BIKE)).toEqual([2, 3, 4, 5, 6, 1, 0])
    expect(settingsToTry({ ...DEFAULT_BIKE, base: 2.5 })).toEqual([2.5, 3, 4, 5, 6, 2, 1, 0])
  })
})

describe('calibrating by feel at two cadences', () => {
  it('recovers a bike from exact answers: its brake, and its curve wherever a feel was found', () => {
    let decided = 0
    let tried = 0
    const offs: number[] = []
    fc.assert(
      fc.property(arbitraryBike, arbitraryRider, (bike, rider) => {
        const rounds = [exactly(bike, rider, 65), exactly(bike, rider, 90)]
        fc.pre(rounds.every(({ found }) => found.length >= 4))
        // The bike it starts from has the right scale, a wrong curve, and the other brake.
        const before = {
          ...bike,
          points: DEFAULT_BIKE.points,
          brake: bike.brake === 'friction' ? ('magnetic' as const) : ('friction' as const),
        }
        const result = calibrateByFeel(before, rider, rounds)
        expect(result.ok).toBe(true)
        if (!result.ok) return
        tried++
        if (result.guess.brake === null) return
        decided++
        expect(result.guess.brake).toBe(bike.brake)
        // Between feels the curve is interpolated, so the exponent is a little off, and the watts with it at cadences away from the round's,
        // and its neighbours' where two of them share a mean.
        const off = Math.abs(result.guess.fit!.exponent - (bike.brake === 'friction' ? 1 : 2))
        offs.push(off)
        const found = new Set(rounds.flatMap((round) => round.found.map(({ setting }) => setting)))
        for (const [setting, watts] of result.bike.points.filter(([each]) => found.has(each))) {
          expect(Math.abs(watts - referenceWatts(calibrationOf(bike), setting))).toBeLessThanOrEqual(
            0.51 + off * Math.log(100 / 60) * (watts + 50),
          )
        }
      }),
      { numRuns: 300 },
    )
    offs.sort((a, b) => a - b)
    expect(offs[Math.floor(0.9 * offs.length)]).toBeLessThan(0.1)
    expect(decided).toBeGreaterThan(0.8 * tried)
  })

  it('takes one brake for the other in fewer than one of a hundred bikes when answers are rounded to quarter turns', () => {
    const guesses = fc.sample(fc.tuple(arbitraryBike, arbitraryRider), 2000).flatMap(([bike, rider]) => {
      const fine = { ...bike, stepsPerUnit: 4 }
      const rounds = [65, 90].map((rpm) => inSteps(exactly(fine, rider, rpm), fine))
      const result = calibrateByFeel(fine, rider, rounds)
      return result.ok && result.guess.brake !== null ? [result.guess.brake === bike.brake] : []
    })
    expect(guesses.length).toBeGreaterThan(1000)
    expect(guesses.filter((isRight) => !isRight).length).toBeLessThan(guesses.length / 100)
  })

  it('finds base and feels of the default bike again, to a step', () => {
    for (const rider of [REGULAR, STRONG]) {
      const rounds = [65, 90].map((rpm) => inSteps(exactly(DEFAULT_BIKE, rider, rpm), DEFAULT_BIKE))
      const result = calibrateByFeel(DEFAULT_BIKE, rider, rounds)
      expect(result.ok && result.guess.brake).toBe('friction')
      const bike = result.ok ? result.bike : DEFAULT_BIKE
      for (const { feel, setting } of bike.feelAnchors!) {
        const exact = settingForWatts(calibrationOf(DEFAULT_BIKE), wattsForEffort(effortOfFeel(feel as 'base'), rider, 80))!
        expect(Math.abs(setting - exact)).toBeLessThanOrEqual(0.25)
      }
      expect(bike.feelAnchors!.map(({ feel }) => feel)).toEqual(FEEL_LADDER.map(({ feel }) => feel))
    }
    const regular = calibrateByFeel(DEFAULT_BIKE, REGULAR, [inSteps(exactly(DEFAULT_BIKE, REGULAR, 80), DEFAULT_BIKE)])
    // At 80 a minute the legs alone cost enough for base to be found a step lighter than the bike says.
    expect(regular.ok && regular.bike.base).toBe(1.75)
  })

  it('does not decide the brake by one cadence, by two equal ones, or where no setting was common', () => {
    const slow = exactly(DEFAULT_BIKE, REGULAR, 65)
    const apart: FeelRound = {
      rpm: 90,
      found: [
        { feel: 'base', setting: 0.5 },
        { feel: 'easy flat', setting: 0.75 },
      ],
    }
    for (const rounds of [[slow], [slow, slow], [slow, apart]]) {
      const result = calibrateByFeel({ ...DEFAULT_BIKE, brake: 'magnetic' }, REGULAR, rounds)
      expect(result).toMatchObject({ ok: true, guess: { brake: null, exponent: null }, bike: { brake: 'magnetic' } })
    }
  })

  it('refuses too few answers, and answers upside down', () => {
    const rpm = 80
    expect(calibrateByFeel(DEFAULT_BIKE, REGULAR, [{ rpm, found: [{ feel: 'base', setting: 2 }] }])).toEqual({
      ok: false,
      reason: 'tooFew',
    })
    expect(calibrateByFeel(DEFAULT_BIKE, REGULAR, [])).toEqual({ ok: false, reason: 'tooFew' })
    const found = [
      { feel: 'heavy hill' as const, setting: 2 },
      { feel: 'base' as const, setting: 4 },
    ]
    expect(calibrateByFeel(DEFAULT_BIKE, REGULAR, [{ rpm, found }])).toEqual({ ok: false, reason: 'upsideDown' })
  })
})
