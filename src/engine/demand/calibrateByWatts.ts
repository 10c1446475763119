import type { Bike } from '#plan/model.ts'
import type { Rpm, Setting } from '#units/units.ts'
import { brakeFitFrom } from './brakeFitFrom.ts'
import { type BrakeGuess, guessBrake, type Round } from './calibrateBrake.ts'
import { withCarriedPoints } from './carriedPoints.ts'
import { type Reading, risingPoints } from './risingPoints.ts'
import { withGuess } from './withGuess.ts'

export type WattsCalibration =
  | { ok: true; bike: Bike; carried: Setting[]; guess: BrakeGuess | null }
  /** `falls`: two settings, the higher of which showed fewer watts. */
  | { ok: false; reason: 'tooFew' }
  | { ok: false; reason: 'falls'; lower: Reading; upper: Reading }

/**
 * A bike with the watts its console showed at a list of settings, all ridden at one cadence,
 * which becomes its reference cadence. A setting read twice counts with its mean. Settings not
 * tried are carried over in proportion beyond the tried ones and left out between them.
 * Readings that fall are not smoothed away: one of the two was misread, and the rider is asked.
 * Readings at a second cadence tell how the brake answers to it, and nothing else.
 *
 * @param rpm the cadence they were ridden at
 * @param readings in any order; at least two settings
 */
export function calibrateByWatts(bike: Bike, rpm: Rpm, readings: readonly Reading[], second?: Round): WattsCalibration {
  const means = meansOf(readings)
  if (means.length < 2) return { ok: false, reason: 'tooFew' }
  const falls = means.findIndex((reading, i) => i > 0 && reading.watts < means[i - 1]!.watts)
  if (falls > 0) return { ok: false, reason: 'falls', lower: means[falls - 1]!, upper: means[falls]! }
  const { points, carried } = withCarriedPoints(risingPoints(readings), bike)
  const guess = second && second.readings.length > 0 ? guessBrake({ rpm, readings }, second, rpm) : null
  const calibrated: Bike = { ...atCadence(bike, rpm), points, calibration: 'watts' }
  return { ok: true, bike: guess ? withGuess(calibrated, guess) : calibrated, carried, guess }
}

/** The same bike told from another reference cadence, but for its watts. */
export const atCadence = (bike: Bike, rpm: Rpm): Bike => ({
  ...bike,
  ...(bike.brakeFit && { brakeFit: brakeFitFrom(bike.brakeFit, bike.referenceRpm, rpm) }),
  referenceRpm: rpm,
})

function meansOf(readings: readonly Reading[]): Reading[] {
  const settings = [...new Set(readings.map(({ setting }) => setting))].sort((a, b) => a - b)
  return settings.map((setting) => {
    const same = readings.filter((reading) => reading.setting === setting)
    return { setting, watts: same.reduce((sum, { watts }) => sum + watts, 0) / same.length }
  })
}

/**
 * Settings worth trying, in the order to try them: base, then heavier ones, then those under
 * base, where legs are light and fast pedalling is unsafe. They are the bike's own points.
 */
export function settingsToTry({ base, points }: Pick<Bike, 'base' | 'points'>): Setting[] {
  const settings = points.map(([setting]) => setting).filter((setting) => setting !== base)
  return [base, ...settings.filter((setting) => setting > base), ...settings.filter((setting) => setting < base).reverse()]
}
