import { knobSize } from '#engine/ledger/knobSize.ts'
import type { Finding } from '#engine/report.ts'
import { quotedItem } from '#plan/names.ts'
import type { KnobSteps } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { eachBlock } from './finding.ts'
import { type Excess, resistanceFix } from './fixes/resistanceFix.ts'
import { needOf } from './needOf.ts'

/** Standing, jumping, pushing or pedalling fast on too little resistance. The strongest need of a block speaks. */
export function tooLight(facts: Facts): Finding[] {
  const { ride, ledger } = facts
  // One line a total, so that rounds that ask for the same are played through once.
  const lines = new Map<KnobSteps, Excess>()
  return eachBlock(facts, (played) => {
    const need = needOf(facts, played)
    if (!need) return undefined
    const target = ledger.limits.base + need.least
    const excess = lines.get(target) ?? ((_, after) => target - after.nominal)
    lines.set(target, excess)
    const missing = excess(played.ledger.before, played.ledger.after)
    if (missing <= 0) return undefined
    const over = need.least - missing
    return {
      rule: need.rule,
      severity: over <= 0 ? 'problem' : 'warning',
      text: say('checksKnob.tooLight', {
        block: quotedItem(played.block),
        doing: need.doing,
        at: knobSize(over, ride.bike),
        needed: knobSize(need.least, ride.bike),
      }),
      why: need.why,
      amount: missing,
      fixes: () => [resistanceFix(facts, played.index, target, excess)],
    }
  })
}
