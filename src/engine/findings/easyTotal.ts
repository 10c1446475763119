import { ruleAt } from '#engine/anotherBike/turnsAt.ts'
import { amountOfKnob, placeOverBase } from '#engine/ledger/amountOfKnob.ts'
import type { Finding } from '#engine/report.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes } from './finding.ts'
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
      text: `${inQuotes(block)} is meant as ${formatNumber(effort, 1)} of 10, but its total is ${placeOverBase(most + over, ride.bike)}; ${most === 0 ? 'base' : amountOfKnob(most, ride.bike)} is the most for that.`,
      why: COMMON_PRACTICE,
      amount: over,
      fixes: () => [resistanceFix(facts, index, ledger.limits.base + most, excess)],
    }
  })
}
