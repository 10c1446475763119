import { ruleAt } from '#engine/anotherBike/turnsAt.ts'
import { knobSize } from '#engine/ledger/knobSize.ts'
import type { Finding } from '#engine/report.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock } from './finding.ts'
import { type Excess, resistanceFix } from './fixes/resistanceFix.ts'
import { needOf } from './needOf.ts'

/** Easy effort asked for on a total that is not easy. What is done out of the saddle or with fast legs keeps what that needs. */
export function easyTotal(facts: Facts): Finding[] {
  const { ride, rules, ledger } = facts
  return eachBlock(facts, (played) => {
    const { index, block, cadence } = played
    const { before, after } = played.ledger
    const effort = Math.max(block.effort.from, block.effort.to)
    if (cadence.kind === 'still' || effort > rules.easyTotalEffort) return undefined
    const most = Math.max(ruleAt(facts, played, rules.easyTotal, 'atMost'), needOf(facts, played)?.least ?? 0)
    const excess: Excess = (_, { nominal }) => nominal - ledger.limits.base - most
    const over = excess(before, after)
    if (over <= 0) return undefined
    return {
      rule: 'easyTotal',
      severity: 'warning',
      text: say('checksKnob.easyTotal', {
        block: quotedItem(block),
        level: effort,
        at: knobSize(most + over, ride.bike),
        most: knobSize(most, ride.bike),
      }),
      why: COMMON_PRACTICE,
      amount: over,
      fixes: () => [resistanceFix(facts, index, ledger.limits.base + most, excess)],
    }
  })
}
