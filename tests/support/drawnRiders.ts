import { driftAt } from '#engine/band/drift.ts'
import { UNCERTAINTY } from '#engine/band/uncertainty.ts'
import { computeRide } from '#engine/computeRide.ts'
import type { RiderReport } from '#engine/report.ts'
import { reserveAt } from '#engine/reserve/reserveCurve.ts'
import { heartRateAt } from '#engine/response/heartReserve.ts'
import { seededRandom } from '#engine/roughIn/seededRandom.ts'
import type { Ride } from '#plan/model.ts'
import { heartShareAt } from './heartShareAt.ts'

/** Nine of ten of a normal spread lie within this many of its standard deviations. */
const NINE_OF_TEN = 1.6449

/** How a factor round 1 is drawn whose error either way is given: evenly within it, or so that nine of ten lie within it. */
export type Spread = 'even' | 'normal'

/** One drawn world: what a bike and a rider might really be, by independent draws. */
export interface Drawn {
  report: RiderReport
  /** Of what is in the report: drift in the room they ride in, how well oxygen tells energy, which recovery they have. */
  kcal: number
  beatsAt: (at: number) => number
  reserveAt: (at: number) => number
  lowestReserve: number
}

export function drawnRiders(ride: Ride, riderIndex: number, spread: Spread, count: number, seed: number): Drawn[] {
  const random = seededRandom(seed)
  const even = () => 2 * random() - 1
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
  const factor = (error: number) => Math.max(0.05, 1 + error * (spread === 'even' ? even() : normal() / NINE_OF_TEN))
  const rider = ride.riders![riderIndex]!
  return Array.from({ length: count }, () => {
    const watts = factor(UNCERTAINTY.typicalWatts)
    const drawn = {
      ...rider,
      criticalPower: rider.criticalPower * factor(UNCERTAINTY.assumedCapacity),
      wPrime: rider.wPrime * factor(UNCERTAINTY.assumedCapacity),
      vo2max: rider.vo2max * factor(UNCERTAINTY.assumedCapacity),
    }
    const bike = { ...ride.bike, points: ride.bike.points.map(([setting, power]): [number, number] => [setting, power * watts]) }
    const report = computeRide({ ...ride, bike, riders: [drawn] }).riders[0]!
    const highest = report.response.range.max + UNCERTAINTY.highestHeart * (factor(1) - 1)
    const range = { rest: rider.restingHr, max: highest }
    const room = random()
    const curve = report.reserve.byRecovery[Math.floor(random() * report.reserve.byRecovery.length)]!
    return {
      report,
      kcal: report.energy.kcal * factor(UNCERTAINTY.energyModel),
      beatsAt: (at) => Math.min(highest, heartRateAt(heartShareAt(report.response, at), range) * (1 + room * driftAt(at))),
      reserveAt: (at) => reserveAt(curve, at),
      lowestReserve: curve.minimum.share,
    }
  })
}
