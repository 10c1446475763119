import { wattsForUptake } from '#engine/demand/oxygenCost.ts'
import { maximumOf } from '#engine/response/heartMaximum.ts'
import { riderInSentence } from '#plan/names.ts'
import type { Rider } from '#plan/riderModel.ts'
import { tell, words } from '#words/words.ts'

/** Shares of the power at the highest oxygen uptake between which critical power commonly lies; common practice. */
const USUAL_SHARE = [0.6, 0.9] as const

/** Why a number cannot stand beside the rider's others, in one sentence; null where it can. */
export function riderProblem(rider: Rider): string | null {
  const highest = maximumOf(rider)
  const { age, restingHr, firstThresholdHr: first, secondThresholdHr: second } = rider
  const said = words.riders
  if (highest <= restingHr) return rider.maxHr === undefined ? said.restingTooHighForAge({ age, highest }) : said.restingTooHigh
  if (first !== undefined && first <= restingHr) return said.firstTooLow
  if (first !== undefined && second !== undefined && second <= first) return said.thresholdsCrossed
  const last = second ?? first
  if (last !== undefined && last <= restingHr) return said.secondTooLow
  if (last === undefined || last < highest) return null
  const which = { second: second !== undefined }
  return rider.maxHr === undefined ? said.thresholdTooHighForAge({ age, highest, ...which }) : said.thresholdTooHigh(which)
}

/** What looks unlikely of a rider's numbers together, in whole sentences. Nothing is refused for it. */
export function riderDoubts(rider: Rider): string[] {
  const { massKg, vo2max, criticalPower } = rider
  const most = wattsForUptake(vo2max, massKg)
  const [low, high] = USUAL_SHARE
  const values = { most, criticalPower, rider: tell(riderInSentence(rider)) }
  if (criticalPower > high * most) return [words.riders.criticalTooHigh(values)]
  return criticalPower < low * most ? [words.riders.criticalTooLow(values)] : []
}
