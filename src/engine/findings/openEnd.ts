import type { PlayedBlock } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import { isOpen } from '#plan/ledger/ledgerState.ts'
import { quotedItem } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE } from './finding.ts'
import { statedFix } from './fixes/resistanceFix.ts'

/**
 * A change called where nobody has known for long how much riders have on. "At least" is an offer while it lasts; what
 * builds on it needs a total or a checkpoint first. Told once for every stretch that is open.
 */
export function openEnd(facts: Facts): Finding[] {
  const { blocks, rules } = facts
  const found: Finding[] = []
  let first = 0
  while (first < blocks.length) {
    const since = blocks[first]!.from
    let end = first
    while (end < blocks.length && isOpen(blocks[end]!.ledger.after) && (end === first || !saysTotal(blocks[end]!))) end++
    const built = blocks.slice(first + 1, end).find(({ block, from, ledger }) => {
      return block.resistance.kind === 'change' && !ledger.checkpoint && from - since > rules.spreadSeconds
    })
    if (built) found.push(tell(facts, built, built.from - since))
    first = Math.max(end, first + 1)
  }
  return found
}

/** A total says again where riders are, also one that is itself open. */
const saysTotal = ({ block: { resistance } }: PlayedBlock): boolean => resistance.kind === 'total' || resistance.kind === 'byFeel'

function tell(facts: Facts, { index, block, ledger }: PlayedBlock, lasts: Seconds): Finding {
  const { stepsPerUnit } = facts.ride.bike
  const { low, nominal, high } = ledger.before
  return atBlock(facts, index, {
    rule: 'openEnd',
    severity: 'hint',
    text: say('checksKnob.openEnd', { block: quotedItem(block), before: { low, nominal, high }, stepsPerUnit, seconds: lasts }),
    why: COMMON_PRACTICE,
    amount: lasts,
    fixes: () => [statedFix(facts, index, ledger.after.nominal)],
  })
}
