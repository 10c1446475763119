import type { RideReport } from '#engine/report.ts'
import { type Said, say } from '#words/said.ts'
import { isTypical, UNCERTAINTY, uncertaintyOf } from './uncertainty.ts'

/** What the ranges of a ride’s estimates hold and allow for, and what would narrow them. */
export function sayBand({ scale, riders: reports }: Pick<RideReport, 'scale' | 'riders'>): Said {
  const { bike } = scale
  const riders = reports.map(({ rider }) => rider)
  const tested = riders.every(({ basis }) => basis === 'tested')
  return say('figures.ranges', {
    watts: uncertaintyOf(bike, riders[0]!).watts.calibrated,
    typical: isTypical(bike),
    capacity: tested ? UNCERTAINTY.testedCapacity : UNCERTAINTY.assumedCapacity,
    calibrate: bike.calibration !== 'watts',
    test: !tested,
  })
}
