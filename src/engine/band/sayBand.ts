import type { RideReport } from '#engine/report.ts'
import { isTypical, UNCERTAINTY, uncertaintyOf } from './uncertainty.ts'

/** What the ranges of a ride’s estimates hold and allow for, and what would narrow them. */
export function sayBand({ scale, riders: reports }: Pick<RideReport, 'scale' | 'riders'>): string {
  const { bike } = scale
  const riders = reports.map(({ rider }) => rider)
  const watts = percent(uncertaintyOf(bike, riders[0]!).watts.calibrated)
  const tested = riders.every(({ basis }) => basis === 'tested')
  const whose = isTypical(bike) ? 'the watts of a bike nobody has calibrated' : 'the bike’s watts'
  const capacity = percent(tested ? UNCERTAINTY.testedCapacity : UNCERTAINTY.assumedCapacity)
  const ways = [bike.calibration !== 'watts' && 'Calibrate the bike by its watts', !tested && 'enter what riders reached in a test']
  const narrowing = ways.filter((way) => way !== false).join(' and ')
  const allowed = `Ranges hold nine of ten such riders: they allow for ${watts} either way in ${whose}, ${capacity} in what riders can do, and what the models leave open`
  return narrowing === '' ? `${allowed}.` : `${allowed}. ${narrowing[0]!.toUpperCase()}${narrowing.slice(1)} to narrow them.`
}

const percent = (share: number): string => `${Math.round(100 * share)} %`
