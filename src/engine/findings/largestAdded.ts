import { sizeAt } from '#engine/anotherBike/turnsAt.ts'
import { knobSize } from '#engine/ledger/knobSize.ts'
import type { Finding } from '#engine/report.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock } from './finding.ts'
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
      text: say('checksKnob.largestAdded', {
        block: quotedItem(block),
        size: knobSize(most + over, ride.bike),
        most: knobSize(most, ride.bike),
      }),
      why: COMMON_PRACTICE,
      amount: over,
      fixes: () => [resistanceFix(facts, index, before.nominal + most, excess)],
    }
  })
}
