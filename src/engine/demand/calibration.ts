import type { Bike } from '#plan/model.ts'
import type { Rpm, Setting, Watts } from '#units/units.ts'
import { type BrakeLaw, brakeLawOf, speedFactor } from './brakeLaw.ts'
import { cubicAt, type MonotoneCubic, monotoneCubic } from './monotoneCubic.ts'

/** A bike's measured points as a curve of power over setting, at the bike's reference cadence. */
export interface Calibration {
  curve: MonotoneCubic
  lowest: Setting
  highest: Setting
  law: BrakeLaw
  referenceRpm: Rpm
}

/** Where a setting lies: among the calibrated points, or beyond them, where watts are only the nearest point's ("by feel"). */
export type Reach = 'calibrated' | 'below' | 'above'

const made = new WeakMap<Bike, Calibration>()

/** The curve of a bike; made once for each bike object. */
export function calibrationOf(bike: Bike): Calibration {
  let calibration = made.get(bike)
  if (calibration === undefined) {
    calibration = {
      curve: monotoneCubic(bike.points.length > 0 ? bike.points : [[0, 0]]),
      lowest: bike.points[0]?.[0] ?? 0,
      highest: bike.points.at(-1)?.[0] ?? 0,
      law: brakeLawOf(bike),
      referenceRpm: bike.referenceRpm,
    }
    made.set(bike, calibration)
  }
  return calibration
}

/** Power at the reference cadence; the outer points' own power beyond them. */
export const referenceWatts = (calibration: Calibration, setting: Setting): Watts => cubicAt(calibration.curve, setting)

export function reachOf(calibration: Calibration, setting: Setting): Reach {
  if (setting < calibration.lowest) return 'below'
  return setting > calibration.highest ? 'above' : 'calibrated'
}

/** Power at a cadence, by the brake's law. */
export function wattsAt(calibration: Calibration, setting: Setting, rpm: Rpm): Watts {
  return referenceWatts(calibration, setting) * speedFactor(calibration.law, rpm / calibration.referenceRpm)
}
