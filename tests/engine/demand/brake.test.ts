import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { translateSetting } from '#engine/anotherBike/translateSetting.ts'
import { computeRide } from '#engine/computeRide.ts'
import { brakeLawFrom, brakeLawOf, speedFactor, speedFactorAlong } from '#engine/demand/brakeLaw.ts'
import { atCadence, calibrateByWatts } from '#engine/demand/calibrateByWatts.ts'
import { calibrationOf, wattsAt } from '#engine/demand/calibration.ts'
import { areaUnder, quadraticAt } from '#engine/demand/quadratic.ts'
import { settingForWatts } from '#engine/demand/settingForWatts.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { Bike, Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { noiseOf } from '#tests/support/madeSong.ts'

const share = fc.double({ min: 0, max: 1, noNaN: true })
const cadence = fc.integer({ min: 50, max: 120 })

/** A bike by physics: drag that rubs and drag that grows with speed, watts at a cadence from torque × angular velocity. */
const physical = (rubbing: number, eddy: number) => (setting: number, rpm: number) => {
  const omega = (2 * Math.PI * rpm) / 60
  return (1 + setting) * (rubbing + eddy * omega) * omega
}

const fitted = (exponent: number, more: Partial<Bike> = {}): Bike => ({ ...DEFAULT_BIKE, brakeFit: { exponent, error: 0.05 }, ...more })

describe('the law of a brake', () => {
  it('is that of its kind until it is fitted, and the two kinds are its ends', () => {
    expect(brakeLawOf({ brake: 'friction' })).toBe(0)
    expect(brakeLawOf({ brake: 'magnetic' })).toBe(1)
    fc.assert(
      fc.property(fc.double({ min: 0.4, max: 1.8, noNaN: true }), (speed) => {
        expect(speedFactor(0, speed)).toBe(speed)
        expect(speedFactor(1, speed)).toBe(speed * speed)
      }),
    )
  })

  it('has the exponent it says at the reference cadence', () => {
    fc.assert(
      fc.property(share, (law) => {
        const step = 1e-5
        const slope = (Math.log(speedFactor(law, 1 + step)) - Math.log(speedFactor(law, 1 - step))) / (2 * step)
        expect(slope).toBeCloseTo(1 + law, 6)
      }),
    )
  })

  it('is the same brake told from another cadence', () => {
    fc.assert(
      fc.property(share, cadence, cadence, cadence, (law, a, b, rpm) => {
        const there = brakeLawFrom(law, a, b)
        expect(there).toBeGreaterThanOrEqual(0)
        expect(there).toBeLessThanOrEqual(1)
        expect(speedFactor(there, rpm / b) * speedFactor(law, b / a)).toBeCloseTo(speedFactor(law, rpm / a), 9)
      }),
    )
  })

  it('keeps power a quadratic along a ramp: as a stepping reference has it', () => {
    fc.assert(
      fc.property(share, cadence, cadence, (law, from, to) => {
        const [start, slope, length] = [from / 80, (to - from) / 80 / 60, 60]
        const along = speedFactorAlong(law, start, slope)
        const steps = 20_000
        let area = 0
        for (let i = 0; i < steps; i++) area += (speedFactor(law, start + slope * ((i + 0.5) / steps) * length) * length) / steps
        expect(areaUnder(along, length)).toBeCloseTo(area, 6)
        expect(quadraticAt(along, length)).toBeCloseTo(speedFactor(law, to / 80), 9)
      }),
      { numRuns: 40 },
    )
  })

  it('is what a ride is ridden with, level and along a ramp', () => {
    const ridden = (bike: Bike, rampTo?: number) => {
      const { grid: _grid, ...song } = demoRide('spark').sections[0]!.song!
      const base = demoRide('spark')
      const block = { ...base.sections[0]!.blocks[0]!, terrain: 'hill' as const, length: { seconds: 60 } }
      const ride = {
        ...base,
        bike,
        sections: [
          {
            ...base.sections[0]!,
            song,
            inCount: undefined,
            outCount: undefined,
            blocks: [{ ...block, cadence: { rpm: 60, rampTo }, resistance: { kind: 'total', from: 8, to: 8 } }],
          },
        ],
      } as unknown as Ride
      return computeRide(ride).riders[1]!.demand[0]!.watts
    }
    const watts = (law: number, rpm: number) => 170 * speedFactor(law, rpm / 80)
    expect(ridden(fitted(1.4))).toBeCloseTo(watts(0.4, 60), 6)
    expect(ridden(fitted(1))).toBeCloseTo(ridden(DEFAULT_BIKE), 9)
    expect(ridden(fitted(2))).toBeCloseTo(ridden({ ...DEFAULT_BIKE, brake: 'magnetic' }), 9)
    // A straight ramp from 60 to 100 in closed form: the mean of s and of s² over it.
    const mean = 0.6 * (80 / 80) + 0.4 * ((60 ** 2 + 60 * 100 + 100 ** 2) / 3 / 80 ** 2)
    expect(ridden(fitted(1.4), 100)).toBeCloseTo(170 * mean, 6)
  })
})

describe('a setting for a power', () => {
  it('gives it back on a fitted brake, and on another bike at any cadence', () => {
    fc.assert(
      fc.property(share, cadence, fc.double({ min: 1, max: 5, noNaN: true }), (law, rpm, setting) => {
        const bike = fitted(1 + law)
        const watts = wattsAt(calibrationOf(bike), setting, rpm)
        expect(settingForWatts(calibrationOf(bike), watts, rpm)).toBeCloseTo(setting, 6)
        const there = translateSetting(
          setting,
          bike,
          {
            ...DEFAULT_BIKE,
            points: [
              [0, 0],
              [20, 2000],
            ],
          },
          rpm,
        )
        expect(there.kind === 'reading' && there.exact).toBeCloseTo(watts / 100 / (rpm / 80), 6)
      }),
    )
  })
})

describe('a brake fitted by a console’s watts at two cadences', () => {
  const settings = [2, 3, 4, 5, 6]

  it('is found again exactly from exact readings, whichever cadence comes first, at the reference cadence', () => {
    fc.assert(
      fc.property(share, cadence, cadence, (law, one, other) => {
        fc.pre(Math.abs(one - other) >= 8)
        const omega = (2 * Math.PI * one) / 60
        const power = physical(omega * (1 - law), law)
        const readings = (rpm: number) => settings.map((setting) => ({ setting, watts: power(setting, rpm) }))
        const result = calibrateByWatts(DEFAULT_BIKE, one, readings(one), { rpm: other, readings: readings(other) })
        expect(result.ok && result.bike.brakeFit!.exponent).toBeCloseTo(1 + law, 2)
        expect(result.ok && result.bike).toMatchObject({ referenceRpm: one, calibration: 'watts' })
      }),
    )
  })

  it('lies within twice its error of the truth for nine bikes in ten whose consoles err by 3 % and show whole watts', () => {
    const noise = noiseOf(7)
    const random = () => (noise() + 1) / 2
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
    let [kept, held, worst] = [0, 0, 0]
    for (let i = 0; i < 1_000; i++) {
      const law = random()
      const omega = (2 * Math.PI * 80) / 60
      const power = physical((omega * (1 - law)) / 3, law / 3)
      const readings = (rpm: number) =>
        settings.map((setting) => ({ setting, watts: Math.round(power(setting, rpm) * (1 + 0.03 * normal())) }))
      const result = calibrateByWatts(DEFAULT_BIKE, 80, readings(80), { rpm: 60, readings: readings(60) })
      if (!result.ok || !result.bike.brakeFit) continue
      kept++
      const { exponent, error } = result.bike.brakeFit
      expect(exponent).toBeGreaterThanOrEqual(1)
      expect(exponent).toBeLessThanOrEqual(2)
      if (Math.abs(exponent - 1 - law) <= 2 * error) held++
      worst = Math.max(worst, Math.abs(exponent - 1 - law))
    }
    expect(kept).toBeGreaterThan(950)
    expect(held / kept).toBeGreaterThan(0.9)
    expect(worst).toBeLessThan(0.4)
  })

  it('stays as it was where nothing was read at a second cadence, and where one setting was', () => {
    const readings = settings.map((setting) => ({ setting, watts: 50 * setting }))
    const bike = fitted(1.3, { referenceRpm: 80 })
    const alone = calibrateByWatts(bike, 60, readings)
    expect(alone).toMatchObject({ ok: true, guess: null, bike: { brake: 'friction', brakeFit: atCadence(bike, 60).brakeFit } })
    const one = calibrateByWatts(DEFAULT_BIKE, 80, readings, { rpm: 60, readings: [{ setting: 3, watts: 112 }] })
    expect(one).toMatchObject({ ok: true, guess: { fit: null, comparisons: 1 } })
    expect(one.ok && one.bike).not.toHaveProperty('brakeFit')
  })

  it('is held between the two laws where readings say more than any brake, and not kept where they scatter', () => {
    const readings = settings.map((setting) => ({ setting, watts: 50 * setting }))
    const at = (of: (setting: number) => number) =>
      calibrateByWatts(DEFAULT_BIKE, 80, readings, {
        rpm: 60,
        readings: settings.map((setting) => ({ setting, watts: 50 * setting * of(setting) })),
      })
    expect(at(() => 0.75 ** 2.6)).toMatchObject({ bike: { brake: 'magnetic', brakeFit: { exponent: 2 } } })
    expect(at(() => 0.75 ** 0.6)).toMatchObject({ bike: { brake: 'friction', brakeFit: { exponent: 1 } } })
    const scattered = at((setting) => 0.75 ** (setting % 2 === 0 ? 0.4 : 2.6))
    expect(scattered).toMatchObject({ ok: true, guess: { fit: null, brake: null } })
    expect(scattered.ok && scattered.bike).not.toHaveProperty('brakeFit')
  })

  it('is the same bike when its watts are told at another cadence', () => {
    fc.assert(
      fc.property(share, cadence, cadence, (law, to, rpm) => {
        const bike = fitted(1 + law)
        const points = bike.points.map(([setting]): [number, number] => [setting, wattsAt(calibrationOf(bike), setting, to)])
        const there = { ...atCadence(bike, to), points }
        const [a, b] = [wattsAt(calibrationOf(bike), 4, rpm), wattsAt(calibrationOf(there), 4, rpm)]
        expect(Math.abs(a / b - 1)).toBeLessThan(0.002)
      }),
    )
  })
})
