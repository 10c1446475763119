import { sizeOfTurns, stepsOfTurns } from '#engine/anotherBike/stepsOfTurns.ts'
import { isJump } from '#engine/cadence/moves.ts'
import { type Constants, constantsOf } from '#engine/constants.ts'
import { calibrationOf } from '#engine/demand/calibration.ts'
import { effortWith, standingBonus } from '#engine/demand/demandOfBlock.ts'
import { legsOf, levelShare } from '#engine/demand/ridden.ts'
import { referenceRiderIndex, riderSetting } from '#engine/demand/riderSetting.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import { limitsOf } from '#plan/ledger/limits.ts'
import type { Block, Ride } from '#plan/model.ts'
import type { Effort, KnobSteps, Rpm } from '#units/units.ts'

/** The total a block is ridden at, and what that demands of the rider the class is judged for; null with the legs still. */
interface ChosenTotal {
  total: KnobSteps
  demand: Effort | null
}

/** Finds totals for a ride's bike and its reference rider. */
export type TotalFinder = (block: Block, rpm: Rpm | null, before: KnobSteps | null) => ChosenTotal

/**
 * Totals whose demand comes nearest to the intended effort, inside what the rules ask: enough to
 * stand, jump, push or turn fast legs on, no more than is easy for easy efforts, and no more added in one
 * call than riders find (`before`: the total before it; null before the first).
 */
export function totalFinder(ride: Ride): TotalFinder {
  const rules = constantsOf(ride)
  const limits = limitsOf(ride)
  const riders = ride.riders?.length ? ride.riders : DEFAULT_RIDERS
  const rider = riders[referenceRiderIndex(riders, ride.level)]!
  const calibration = calibrationOf(ride.bike)
  const legs = legsOf(rider)

  return (block, rpm, before) => {
    const pace = rpm ?? ride.bike.referenceRpm
    const least = Math.min(limits.ceiling, limits.base + stepsOfTurns(leastTurns(block, rpm, rules), ride.bike, pace, 'atLeast'))
    const easiest = Math.max(block.effort.from, block.effort.to) <= rules.easyTotalEffort
    const most = Math.max(
      least,
      Math.min(limits.ceiling, easiest ? limits.base + stepsOfTurns(rules.easyTotal, ride.bike, pace, 'atMost') : limits.ceiling),
    )
    const found = before === null ? most : Math.min(most, before + sizeOfTurns(rules.largestAdded, ride.bike, pace))
    if (rpm === null || block.cadence === 'legsStill') return { total: Math.min(found, least), demand: null }
    const demandOf = (total: KnobSteps) =>
      effortWith(levelShare(rpm, riderSetting(ride.bike, ride.datum, rider, total), calibration, legs), standingBonus(block))
    let best = least
    for (let total = least; total <= Math.max(least, found); total++) {
      if (Math.abs(demandOf(total) - block.effort.from) < Math.abs(demandOf(best) - block.effort.from)) best = total
    }
    return { total: best, demand: demandOf(best) }
  }
}

/** Turns over base a block needs under it. */
function leastTurns({ posture, terrain, move }: Block, rpm: Rpm | null, rules: Constants): number {
  const up = posture === 'standing' || posture === 'hovering'
  return Math.max(
    0,
    up ? rules.standingTotal : 0,
    move && (isJump(move.name) || up) ? rules.moveTotal : 0,
    terrain === 'push' || terrain === 'surge' ? rules.pushTotal : 0,
    rpm !== null && rpm >= rules.fastLegsRpm ? rules.fastLegsTotal : 0,
  )
}
