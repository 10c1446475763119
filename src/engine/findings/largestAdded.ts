import { sizeAt } from '#engine/anotherBike/turnsAt.ts'
import { amountOfKnob } from '#engine/ledger/amountOfKnob.ts'
import type { Finding } from '#engine/report.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes } from './finding.ts'
import { type Excess, resistanceFix } from './fixes/resistanceFix.ts'

/** More added in one call than riders find with one hand. The first call of the ride sets the bike up and is free. */
export function largestAdded(facts: Facts): Finding[] {
  const { ride, rules } = facts
  return eachBlock(facts, (played) => {
    const { index, block, ledger } = played
    const { before, after } = ledger
    if (index === 0 || block.resistance.kind === 'byFeel' || after.nominal <= before.nominal) return undefined
    const most = sizeAt(facts, played, rules.largestAdded)
    const excess: Excess = (from, to) => to.nominal - from.nominal - most
    const over = excess(before, after)
    if (over <= 0 || before.nominal < facts.ledger.limits.base) return undefined
    return {
      rule: 'largestAdded',
      severity: 'warning',
      text: `${inQuotes(block)} adds ${amountOfKnob(most + over, ride.bike)} in one call; ${amountOfKnob(most, ride.bike)} is the most riders find safely.`,
      why: COMMON_PRACTICE,
      amount: over,
      fixes: () => [resistanceFix(facts, index, before.nominal + most, excess)],
    }
  })
}
