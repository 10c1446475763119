import { calibrationOf, referenceWatts } from '#engine/demand/calibration.ts'
import type { Bike } from '#plan/model.ts'
import type { Setting } from '#units/units.ts'
import { words } from '#words/words.ts'
import { sayAt } from './fields.ts'

/** Why points are no calibration, in one sentence: somewhere a higher setting has fewer watts; null where they rise. */
export function pointsProblem(points: Bike['points'], bike: Pick<Bike, 'stepsPerUnit'>): string | null {
  const at = points.findIndex(([, watts], i) => i > 0 && watts < points[i - 1]![1])
  if (at < 0) return null
  const [low, high] = [points[at - 1]!, points[at]!]
  return words.setup.wattsFall({ high: sayAt(high[0], bike), low: sayAt(low[0], bike), watts: low[1] })
}

/** The points with one more, on the curve they make, to the nearest whole watt that keeps them rising. */
export function withPoint(bike: Bike, setting: Setting): Bike['points'] {
  const below = bike.points.filter(([other]) => other < setting)
  const above = bike.points.filter(([other]) => other > setting)
  const watts = Math.round(referenceWatts(calibrationOf(bike), setting))
  const held = Math.min(above[0]?.[1] ?? Number.POSITIVE_INFINITY, Math.max(below.at(-1)?.[1] ?? 0, watts))
  return [...below, [setting, held], ...above]
}
