import type { Finding } from '#engine/report.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes } from './finding.ts'
import { type Excess, resistanceFix } from './fixes/resistanceFix.ts'
import { needOf } from './needOf.ts'
import { amountOfKnob, turnsInSteps } from './sizes.ts'

/** Easy effort asked for on a total that is not easy. What is done out of the saddle or with fast legs keeps what that needs. */
export function easyTotal(facts: Facts): Finding[] {
  const { ride, rules, ledger } = facts
  const light = Math.floor(turnsInSteps(rules.easyTotal, ride) + 1e-9)
  return eachBlock(facts, (played) => {
    const { index, block, cadence } = played
    const { before, after } = played.ledger
    const need = needOf(facts, played)
    const most = Math.max(light, need ? Math.ceil(turnsInSteps(need.turns, ride) - 1e-9) : 0)
    const excess: Excess = (_, { nominal }) => nominal - ledger.limits.base - most
    const effort = Math.max(block.effort.from, block.effort.to)
    const over = excess(before, after)
    if (cadence.kind === 'still' || effort > rules.easyTotalEffort || over <= 0) return undefined
    const total = amountOfKnob(most + over, ride.bike)
    return {
      rule: 'easyTotal',
      severity: 'warning',
      text: `${inQuotes(block)} is meant as ${formatNumber(effort, 1)} of 10, but its total is ${total} over base; ${amountOfKnob(most, ride.bike)} is the most for that.`,
      why: COMMON_PRACTICE,
      amount: over,
      fixes: [resistanceFix(facts, index, ledger.limits.base + most, excess)],
    }
  })
}
