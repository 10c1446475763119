import { describe, expect, it } from 'vitest'
import { sayBand } from '#engine/band/sayBand.ts'
import { computeRide } from '#engine/computeRide.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Bike, Ride } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { blocksOnly } from '#tests/support/reported.ts'
import { inSeconds } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const spark = demoRide('spark')
const REGULAR = DEFAULT_RIDERS[1]!
const riding = (bike: Partial<Bike>, rider: Partial<Rider> = {}): Ride => ({
  ...spark,
  bike: { ...spark.bike, ...bike },
  riders: [{ ...REGULAR, ...rider }],
})
const bandOf = (ride: Ride) => computeRide(ride).riders[0]!.band
const width = ({ low, high }: { low: number; high: number }) => high - low
/** Watts that are nobody's typical ones. */
const OWN: Bike['points'] = spark.bike.points.map(([setting, watts]) => [setting, watts + 1])

describe('a band', () => {
  it('holds the estimate, and both ends lie where they are called', () => {
    for (const { demand, energy, reserve, response, band } of computeRide(spark).riders) {
      expect(band.energy.low).toBeLessThan(energy.kcal)
      expect(band.energy.high).toBeGreaterThan(energy.kcal)
      expect(band.lowestReserve.low).toBeLessThanOrEqual(Math.min(...reserve.byRecovery.map(({ minimum }) => minimum.share)))
      expect(band.lowestReserve.high).toBeGreaterThanOrEqual(reserve.minimum.share)
      expect(band.heart.highest.share.low).toBeLessThan(response.maximum.share)
      expect(band.heart.highest.share.high).toBeGreaterThan(response.maximum.share)
      demand.forEach((asked, i) => {
        expect(band.demand.low[i]!.mean).toBeLessThan(asked!.mean)
        expect(band.demand.high[i]!.mean).toBeGreaterThanOrEqual(asked!.mean)
      })
    }
  })

  it('of a bike off by 30 % holds what the energy then is', () => {
    const at = (factor: number) =>
      computeRide(riding({ points: spark.bike.points.map(([s, watts]) => [s, watts * factor]) })).riders[0]!.energy.kcal
    const { energy } = bandOf(riding({}))
    expect(energy.low).toBeLessThan(at(0.7))
    expect(energy.high).toBeGreaterThan(at(1.3))
  })

  it('gets narrower by a calibration, and by what a test has found', () => {
    const bands = [
      riding({}),
      riding({ points: OWN }),
      riding({ points: OWN, calibration: 'watts' }),
      riding({ points: OWN, calibration: 'watts' }, { basis: 'tested', maxHr: 182 }),
    ].map(bandOf)
    const [typical, typed, measured, tested] = bands.map(({ energy, heart, lowestReserve, demand }) => ({
      energy: width(energy),
      heart: width(heart.mean.beats),
      reserve: width(lowestReserve),
      demand: demand.high[3]!.mean - demand.low[3]!.mean,
    }))
    for (const figure of ['energy', 'heart', 'reserve', 'demand'] as const) {
      expect(typed![figure]).toBeLessThan(typical![figure])
      expect(measured![figure]).toBeLessThan(typed![figure])
    }
    expect(tested!.heart).toBeLessThan(measured!.heart)
    expect(tested!.reserve).toBeLessThan(measured!.reserve)
  })

  it('beyond the calibrated points is as wide as if nobody had calibrated', () => {
    const heavy = (bike: Partial<Bike>) => {
      const ride = blocksOnly([{ ...inSeconds(60), cadence: { rpm: 60 }, resistance: { kind: 'total', from: 30, to: 30 } }])
      const { demand } = bandOf({
        ...ride,
        bike: {
          ...ride.bike,
          points: [
            [0, 10],
            [1, 60],
          ],
          ...bike,
        },
        riders: [REGULAR],
      })
      return demand.high[0]!.mean - demand.low[0]!.mean
    }
    expect(heavy({ calibration: 'watts' })).toBeCloseTo(heavy({}), 9)
  })

  it('says what it allows for, and what would narrow it', () => {
    const words = (ride: Ride) => told(sayBand(computeRide(ride)))
    expect(words(riding({}))).toBe(
      'Ranges hold for nine of ten such riders: they allow for 30% either way in the watts of a bike nobody has calibrated, 10% in what riders can do, and what the models leave open. Calibrate the bike by its watts and enter riders’ test results to narrow them.',
    )
    expect(words(riding({ points: OWN, calibration: 'watts' }, { basis: 'tested' }))).toBe(
      'Ranges hold for nine of ten such riders: they allow for 10% either way in the bike’s watts, 5% in what riders can do, and what the models leave open.',
    )
  })

  it('of the heart leaves room for a hot room only after a quarter of an hour', () => {
    const long = blocksOnly([{ ...inSeconds(3600), cadence: { rpm: 70 }, resistance: { kind: 'total', from: 4, to: 4 } }], {
      riders: [REGULAR],
    })
    const { heartAt } = bandOf(long)
    expect(heartAt(890).high).toBeCloseTo(heartAt(600).high, 3)
    const { rest, max } = computeRide(long).riders[0]!.response.range
    const beats = (share: number) => rest + share * (max - rest)
    // 11 % more beats from minute 15 to 45: Med Sci Sports Exerc 2008;40(6), doi 10.1249/MSS.0b013e3181666ed7.
    expect(beats(heartAt(2700).high) / beats(heartAt(890).high)).toBeCloseTo(1.11, 3)
    expect(heartAt(3500).high).toBeCloseTo(heartAt(2700).high, 9)
  })
})

describe('riders who work differently', () => {
  it('spend different energy: by their base, their mass, their pace, and standing', () => {
    const kcal = computeRide(spark).riders.map(({ energy }) => energy.kcal)
    expect(kcal[1]! / kcal[0]!).toBeGreaterThan(1.15)
    expect(kcal[2]! / kcal[1]!).toBeGreaterThan(1.15)
    const of = (rider: Partial<Rider>, block = {}) =>
      computeRide(
        blocksOnly([{ ...inSeconds(600), cadence: { rpm: 80 }, resistance: { kind: 'total', from: 4, to: 4 }, ...block }], {
          riders: [{ ...REGULAR, ...rider }],
        }),
      ).riders[0]!.energy.kcal
    expect(of({ massKg: 90 })).toBeGreaterThan(of({}))
    expect(of({ baseOffset: 0.5 })).toBeGreaterThan(of({}))
    expect(of({}, { posture: 'standing' }) / of({})).toBeCloseTo(3.17 / 3.06, 9)
    // Fast legs against the same watts: the bike's base is where it gives 50 W at 80.
    const same = (rpm: number) => of({}, { cadence: { rpm }, resistance: { kind: 'total', from: 0, to: 0 } })
    expect(same(110)).toBeGreaterThan(same(55) * 1.5)
  })
})
