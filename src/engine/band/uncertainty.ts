import type { Reach } from '#engine/demand/calibration.ts'
import { OXYGEN } from '#engine/demand/oxygenCost.ts'
import { TYPICAL_BIKES } from '#plan/defaults.ts'
import type { Bike } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'

/**
 * How far off an estimate's inputs may be, as the share either way that holds nine of ten of them. Common practice, no
 * source, but where one is named.
 */
export const UNCERTAINTY = {
  /** Watts of a bike nobody has calibrated, and beyond the calibrated points of one that was. */
  typicalWatts: 0.3,
  /** Watts of a bike calibrated by what it feels like or typed in, and by its console. */
  feltWatts: 0.2,
  measuredWatts: 0.1,
  /** A rider's critical power, W′, and highest oxygen uptake, each by itself; and once a test has found them. */
  assumedCapacity: 0.1,
  testedCapacity: 0.05,
  /** Energy from oxygen, and oxygen from watts. */
  energyModel: 0.15,
  /** Highest heart rate by age, beats a minute: 7–11 in the lines compared by Robergs RA, Landwehr R, JEPonline 2002;5(2):1-10. */
  highestHeart: 10,
} as const

/** How far off what one rider meets may be: shares either way, beats a minute for the highest heart rate. */
export interface Uncertainty {
  watts: Record<Reach, number>
  /** Critical power and W′. */
  capacity: number
  /** What is between resting and highest oxygen uptake. */
  uptake: number
  beats: number
}

export function uncertaintyOf(bike: Bike, { basis, vo2max, maxHr }: Rider): Uncertainty {
  const beyond = UNCERTAINTY.typicalWatts
  const within = isTypical(bike) ? beyond : bike.calibration === 'watts' ? UNCERTAINTY.measuredWatts : UNCERTAINTY.feltWatts
  const capacity = basis === 'tested' ? UNCERTAINTY.testedCapacity : UNCERTAINTY.assumedCapacity
  return {
    watts: { calibrated: within, below: beyond, above: beyond },
    capacity,
    uptake: (UNCERTAINTY.assumedCapacity * vo2max) / (vo2max - OXYGEN.rest),
    beats: maxHr === undefined ? UNCERTAINTY.highestHeart : 0,
  }
}

/** Whether a bike still has the watts it came with. */
export const isTypical = ({ points }: Pick<Bike, 'points'>): boolean =>
  TYPICAL_BIKES.some((typical) => JSON.stringify(typical.points) === JSON.stringify(points))

/** So much wider that a band holds nine of ten however its errors are spread, evenly or with long tails. */
const MARGIN = 1.15

/** Errors that have nothing to do with each other, taken together. */
export const together = (...errors: readonly number[]): number => MARGIN * Math.hypot(...errors)
