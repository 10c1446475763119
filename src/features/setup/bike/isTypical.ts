import { TYPICAL_BIKES } from '#plan/defaults.ts'
import type { Bike } from '#plan/model.ts'

/** Whether a bike's watts are typical ones, which nobody measured. */
export const isTypical = ({ points, calibration }: Pick<Bike, 'points' | 'calibration'>): boolean =>
  calibration === undefined && TYPICAL_BIKES.some((typical) => JSON.stringify(points) === JSON.stringify(typical.points))
