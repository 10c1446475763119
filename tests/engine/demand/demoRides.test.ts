import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { RideReport, RiderReport } from '#engine/report.ts'
import { heartRateAt } from '#engine/response/heartReserve.ts'
import { demoRide } from '#tests/support/demoRides.ts'

const spark = computeRide(demoRide('spark'))
const ridge = computeRide(demoRide('ridge'))

const riderOf = (report: RideReport, id: string): RiderReport => report.riders.find(({ rider }) => rider.id === id)!

/** Demand less intent of every block; in these rides efforts are level. */
const gaps = (report: RideReport, id: string): number[] =>
  riderOf(report, id).demand.map((asked, i) => asked!.mean - report.blocks[i]!.block.effort.from)

const most = (values: readonly number[]): number => Math.max(...values)
const least = (values: readonly number[]): number => Math.min(...values)

describe('what the demo rides ask of three riders', () => {
  it('stays near intent for the regular rider on every block', () => {
    expect(most(gaps(spark, 'regular').map(Math.abs))).toBeCloseTo(1.15, 2)
    expect(most(gaps(ridge, 'regular').map(Math.abs))).toBeCloseTo(1.37, 2)
  })

  it('is too much for the new rider, by up to 2.4, and draws the reserve down to 53 % and 48 %', () => {
    expect(most([...gaps(spark, 'new'), ...gaps(ridge, 'new')])).toBeCloseTo(2.36, 2)
    expect(Math.round(100 * riderOf(spark, 'new').reserve.minimum.share)).toBe(53)
    expect(Math.round(100 * riderOf(ridge, 'new').reserve.minimum.share)).toBe(48)
  })

  it('is too little for the strong rider, by up to 1.5, who never draws on the reserve', () => {
    expect(least([...gaps(spark, 'strong'), ...gaps(ridge, 'strong')])).toBeCloseTo(-1.48, 2)
    for (const report of [spark, ridge]) {
      expect(riderOf(report, 'strong').reserve.drawnOn).toBe(false)
      expect(riderOf(report, 'strong').reserve.minimum.share).toBe(1)
    }
  })

  it('judges both rides for the regular rider', () => {
    expect([spark, ridge].map(({ riders }) => riders.find(({ reference }) => reference)!.rider.id)).toEqual(['regular', 'regular'])
  })
})

describe('the mixed class against averages of measured classes', () => {
  // Piacentini 2009, Battista 2008, Muyor 2010: 52–88 % of maximal oxygen uptake, 65–90 % of maximal
  // heart rate. A plan reads lower than measured classes, whose riders go over the target most of the time.
  const { rider, response, energy } = riderOf(ridge, 'regular')

  it('lies inside the published band', () => {
    const uptake = (100 * energy.meanUptake) / rider.vo2max
    const beats = (100 * heartRateAt(response.mean, response.range)) / response.range.max
    expect(uptake).toBeGreaterThanOrEqual(52)
    expect(uptake).toBeLessThanOrEqual(88)
    expect(beats).toBeGreaterThanOrEqual(65)
    expect(beats).toBeLessThanOrEqual(90)
  })

  it('spends the whole ride in the five classes', () => {
    const seconds = Object.values(response.secondsByClass).reduce((sum, part) => sum + part, 0)
    expect(seconds).toBeCloseTo(ridge.overall.total, 6)
  })
})
