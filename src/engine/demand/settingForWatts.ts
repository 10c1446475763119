import type { Rpm, Setting, Watts } from '#units/units.ts'
import { type Calibration, referenceWatts } from './calibration.ts'

/** Halvings after which the two ends of a knob's range are neighbours. */
const HALVINGS = 60

/**
 * The setting at which a bike gives a power at a cadence: the inverse of `wattsAt`, by
 * halving between the outer calibrated points.
 *
 * @returns the lowest such setting where the curve is level, null where the calibrated points do not reach the power
 */
export function settingForWatts(calibration: Calibration, watts: Watts, rpm: Rpm = calibration.referenceRpm): Setting | null {
  const speed = rpm / calibration.referenceRpm
  const wanted = watts / (calibration.brake === 'friction' ? speed : speed * speed)
  let [low, high] = [calibration.lowest, calibration.highest]
  if (wanted < referenceWatts(calibration, low) || wanted > referenceWatts(calibration, high)) return null
  if (wanted === referenceWatts(calibration, low)) return low
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    if (referenceWatts(calibration, middle) < wanted) low = middle
    else high = middle
  }
  return high
}
