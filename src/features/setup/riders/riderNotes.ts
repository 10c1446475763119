import { wattsForUptake } from '#engine/demand/oxygenCost.ts'
import { maximumOf } from '#engine/response/heartMaximum.ts'
import type { Rider } from '#plan/riderModel.ts'
import { formatNumber } from '#units/formatNumber.ts'

/** Shares of the power at the highest oxygen uptake between which critical power commonly lies; common practice. */
const USUAL_SHARE = [0.6, 0.9] as const

/** Why a number cannot stand beside the rider's others, in one sentence; null where it can. */
export function riderProblem(rider: Rider): string | null {
  const highest = maximumOf(rider)
  if (highest <= rider.restingHr) {
    return rider.maxHr === undefined
      ? `At ${rider.age} years the highest heart rate is taken as ${formatNumber(highest, 0)}; the resting one has to be lower.`
      : 'The highest heart rate has to be above the resting one.'
  }
  const { restingHr, firstThresholdHr: first, secondThresholdHr: second } = rider
  if (first !== undefined && first <= restingHr) return 'The first threshold has to be above the resting heart rate.'
  if (first !== undefined && second !== undefined && second <= first) return 'The second threshold has to be above the first.'
  const last = second ?? first
  if (last !== undefined && last <= restingHr) return 'The second threshold has to be above the resting heart rate.'
  if (last !== undefined && last >= highest) {
    const which = second === undefined ? 'first' : 'second'
    return rider.maxHr === undefined
      ? `At ${rider.age} years the highest heart rate is taken as ${formatNumber(highest, 0)}; the ${which} threshold has to be lower, or the highest one given.`
      : `The ${which} threshold has to be below the highest heart rate.`
  }
  return null
}

/** What looks unlikely of a rider's numbers together, in whole sentences. Nothing is refused for it. */
export function riderDoubts({ name, massKg, vo2max, criticalPower }: Rider): string[] {
  const most = wattsForUptake(vo2max, massKg)
  const [low, high] = USUAL_SHARE
  const said = `${formatNumber(most, 0)} watts take all the oxygen uptake of the ${name}`
  if (criticalPower > high * most)
    return [`${said}; a critical power of ${formatNumber(criticalPower, 0)} is very close to that or over it.`]
  if (criticalPower < low * most) return [`${said}; a critical power of ${formatNumber(criticalPower, 0)} is far under that.`]
  return []
}
