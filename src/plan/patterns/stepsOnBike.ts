import type { Bike, Ride } from '#plan/model.ts'
import type { KnobSteps, Setting, Watts } from '#units/units.ts'

/**
 * Steps on a ride's bike, from its datum, that weigh what a total over base weighs on
 * another bike: equal power at the reference cadences, straight between calibration points,
 * to the nearest whole step inside the bike's range. On the same bike it is the same total.
 */
export function stepsOnBike(totalOverBase: KnobSteps, from: Bike, ride: Pick<Ride, 'bike' | 'datum'>): KnobSteps {
  const { bike } = ride
  const setting = from.base + totalOverBase / from.stepsPerUnit
  const same = sameSettings(from, bike) ? setting : settingAt(bike, wattsAt(from, setting))
  const inside = Math.min(bike.max, Math.max(bike.min ?? 0, same))
  const steps = Math.round((inside - (ride.datum === 'base' ? bike.base : 0)) * bike.stepsPerUnit)
  // Rounding gives −0 a little under base, which a document does not hold.
  return steps === 0 ? 0 : steps
}

const sameSettings = (a: Bike, b: Bike): boolean =>
  a === b || (a.base === b.base && a.stepsPerUnit === b.stepsPerUnit && JSON.stringify(a.points) === JSON.stringify(b.points))

const wattsAt = (bike: Bike, setting: Setting): Watts => alongLine(bike.points, setting)

const settingAt = (bike: Bike, watts: Watts): Setting =>
  alongLine(
    bike.points.map(([setting, power]): [number, number] => [power, setting]),
    watts,
  )

/** Straight between points of rising x, and beyond the outer two on their line; a single point or none gives its y or x itself. */
function alongLine(points: readonly (readonly [x: number, y: number])[], x: number): number {
  if (points.length < 2) return points[0]?.[1] ?? x
  const found = points.findIndex((point) => point[0] >= x)
  const right = found === -1 ? points.length - 1 : Math.max(1, found)
  const [x0, y0] = points[right - 1]!
  const [x1, y1] = points[right]!
  return x1 === x0 ? y1 : y0 + ((x - x0) * (y1 - y0)) / (x1 - x0)
}
