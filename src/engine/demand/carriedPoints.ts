import type { Bike } from '#plan/model.ts'
import type { Setting, Watts } from '#units/units.ts'
import { calibrationOf, referenceWatts } from './calibration.ts'

/**
 * New points of a bike, with what is left of its old ones beyond them: outside the settings
 * tried, the old curve goes on in proportion, so that a rider a little under base is not taken
 * to ride at base. Watts to whole ones.
 *
 * @param points at least one, rising
 * @returns the points, and which of their settings were carried over
 */
export function withCarriedPoints(points: readonly [Setting, Watts][], bike: Bike): { points: [Setting, Watts][]; carried: Setting[] } {
  const below = scaledTo(points[0]!, bike, (setting, edge) => setting < edge)
  const above = scaledTo(points.at(-1)!, bike, (setting, edge) => setting > edge)
  return {
    points: [...below, ...points, ...above].map(([setting, watts]) => [setting, Math.round(watts)]),
    carried: [...below, ...above].map(([setting]) => setting),
  }
}

function scaledTo([edge, watts]: [Setting, Watts], bike: Bike, isBeyond: (setting: Setting, edge: Setting) => boolean): [Setting, Watts][] {
  const before = referenceWatts(calibrationOf(bike), edge)
  if (before <= 0) return []
  const share = watts / before
  return bike.points.filter(([setting]) => isBeyond(setting, edge)).map(([setting, old]) => [setting, old * share])
}
