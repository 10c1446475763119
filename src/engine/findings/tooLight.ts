import type { Finding } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import type { Facts } from './facts.ts'
import { eachBlock, inQuotes } from './finding.ts'
import { type Excess, resistanceFix } from './fixes/resistanceFix.ts'
import { needOf } from './needOf.ts'
import { amountOfKnob, turnsInSteps } from './sizes.ts'

/** Standing, jumping, pushing or pedalling fast on too little resistance. The strongest need of a block speaks. */
export function tooLight(facts: Facts): Finding[] {
  const { ride, ledger } = facts
  return eachBlock(facts, (played) => {
    const need = needOf(facts, played)
    if (!need) return undefined
    const least = Math.ceil(turnsInSteps(need.turns, ride) - 1e-9)
    const target = ledger.limits.base + least
    const excess: Excess = (_, after) => target - after.nominal
    const missing = excess(played.ledger.before, played.ledger.after)
    if (missing <= 0) return undefined
    const over = least - missing
    return {
      rule: need.rule,
      severity: over <= 0 ? 'problem' : 'warning',
      text: `${inQuotes(played.block)} ${need.doing} ${placeOf(over, ride)}; at least ${amountOfKnob(least, ride.bike)} over base keeps the legs in charge.`,
      why: need.why,
      amount: missing,
      fixes: [resistanceFix(facts, played.index, target, excess)],
    }
  })
}

function placeOf(over: KnobSteps, { bike }: Ride): string {
  if (over === 0) return 'at base'
  return `${amountOfKnob(Math.abs(over), bike)} ${over > 0 ? 'over' : 'under'} base`
}
