import { brakeLawOf } from '#engine/demand/brakeLaw.ts'
import { calibrationOf, reachOf, wattsAt } from '#engine/demand/calibration.ts'
import { settingForWatts } from '#engine/demand/settingForWatts.ts'
import type { Bike } from '#plan/model.ts'
import type { Rpm, Setting, Watts } from '#units/units.ts'

/** What a setting of one bike is on another. */
export type Translated =
  | {
      kind: 'reading'
      /** The nearest whole step of the other bike. */
      setting: Setting
      /** Where the knob would have to stand for the very same power. */
      exact: Setting
      /** What rounding to a whole step adds to the power, or takes from it. */
      wattsOff: Watts
    }
  | {
      kind: 'byFeel'
      /** Whose calibrated points do not reach, and on which side. */
      beyond: 'from' | 'to'
      side: 'below' | 'above'
    }

/**
 * The setting at which another bike asks for the same power at a cadence: through the curve of
 * the one at that cadence, and back through the curve of the other, which only ever rises. Where
 * that curve is level, the lowest setting that gives the power. Outside either bike's calibrated
 * points nothing is known and riders go by feel.
 *
 * @param rpm above 0; at another cadence the same two knobs can weigh differently, since a
 *   magnetic brake grows with its square, a friction brake in proportion, and a fitted one between
 */
export function translateSetting(setting: Setting, from: Bike, to: Bike, rpm: Rpm): Translated {
  const source = calibrationOf(from)
  const target = calibrationOf(to)
  const reach = reachOf(source, setting)
  if (reach !== 'calibrated') return { kind: 'byFeel', beyond: 'from', side: reach }
  const watts = wattsAt(source, setting, rpm)
  const exact = sameCurve(from, to) ? setting : settingForWatts(target, watts, rpm)
  if (exact === null) {
    return { kind: 'byFeel', beyond: 'to', side: watts < wattsAt(target, target.lowest, rpm) ? 'below' : 'above' }
  }
  const rounded = wholeStep(exact, to)
  return { kind: 'reading', setting: rounded, exact, wattsOff: wattsAt(target, rounded, rpm) - watts }
}

/** One bike on itself: the way through watts would lose the place on a level stretch. */
const sameCurve = (a: Bike, b: Bike): boolean =>
  a === b ||
  (brakeLawOf(a) === brakeLawOf(b) &&
    a.referenceRpm === b.referenceRpm &&
    a.points.length === b.points.length &&
    a.points.every(([setting, watts], i) => setting === b.points[i]![0] && watts === b.points[i]![1]))

/** The nearest whole step inside the bike's range. */
function wholeStep(setting: Setting, { stepsPerUnit, min = 0, max }: Bike): Setting {
  const steps = Math.round(setting * stepsPerUnit)
  return Math.min(Math.round(max * stepsPerUnit), Math.max(Math.round(min * stepsPerUnit), steps)) / stepsPerUnit
}
