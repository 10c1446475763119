import type { Rpm, Setting, Watts } from '#units/units.ts'
import { speedFactor } from './brakeLaw.ts'
import { type Calibration, referenceWatts } from './calibration.ts'

/** Halvings after which the two ends of a knob's range are neighbours. */
const HALVINGS = 60
const ROUNDING = 1e-12

/**
 * The setting at which a bike gives a power at a cadence: the inverse of `wattsAt`, by
 * halving between the outer calibrated points.
 *
 * @returns the lowest such setting where the curve is level, null where the calibrated points do not reach the power
 */
export function settingForWatts(calibration: Calibration, watts: Watts, rpm: Rpm = calibration.referenceRpm): Setting | null {
  const wanted = watts / speedFactor(calibration.law, rpm / calibration.referenceRpm)
  let [low, high] = [calibration.lowest, calibration.highest]
  const [least, most] = [referenceWatts(calibration, low), referenceWatts(calibration, high)]
  // A power of the last point that went to another cadence and back may lie past it by a rounding.
  if (wanted < least * (1 - ROUNDING) || wanted > most * (1 + ROUNDING)) return null
  if (wanted <= least) return low
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    if (referenceWatts(calibration, middle) < wanted) low = middle
    else high = middle
  }
  return high
}
