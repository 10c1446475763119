import { ruleAt } from '#engine/anotherBike/turnsAt.ts'
import { knobSize } from '#engine/ledger/knobSize.ts'
import type { Finding } from '#engine/report.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE, type Noticed } from './finding.ts'
import { resistanceFix } from './fixes/resistanceFix.ts'
import { hasNoEnd } from './hasNoEnd.ts'

/** A class that ends with resistance still on. */
export function endsHeavy(facts: Facts): Finding[] {
  const { blocks, ledger, ride, rules } = facts
  const last = blocks.at(-1)
  // Nothing turns against a knob on a stopped wheel.
  if (!last || last.cadence.kind === 'still' || hasNoEnd(facts)) return []
  const over = ledger.end.nominal - ledger.limits.base
  const most = ruleAt(facts, last, rules.endTotal, 'atMost')
  if (over <= most) return []
  const noticed: Noticed = {
    rule: 'endsHeavy',
    severity: 'hint',
    text: say('checksKnob.endsHeavy', { over: knobSize(over, ride.bike), most: knobSize(most, ride.bike) }),
    why: COMMON_PRACTICE,
    amount: over - most,
    fixes: () => [resistanceFix(facts, last.index, ledger.limits.base + most)],
  }
  return [atBlock(facts, last.index, noticed)]
}
