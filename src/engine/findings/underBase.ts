import { amountOfKnob } from '#engine/ledger/amountOfKnob.ts'
import type { Finding } from '#engine/report.ts'
import type { Facts } from './facts.ts'
import { eachBlock, inQuotes } from './finding.ts'
import { type Excess, resistanceFix, totalFix } from './fixes/resistanceFix.ts'
import { needOf } from './needOf.ts'

const WHY = "an instructor-training body's public position statement: low resistance is never no resistance"

/** Legs turning with the knob all the way off, or under the base at which riders control the pedals. Blocks that need more than base are told that instead. */
export function underBase(facts: Facts): Finding[] {
  const { ride, ledger } = facts
  const { base } = ledger.limits
  const excess: Excess = (_, after) => base - after.nominal
  return eachBlock(facts, (played) => {
    const { index, block, cadence } = played
    const under = excess(played.ledger.before, played.ledger.after)
    if (under <= 0 || cadence.kind === 'still' || needOf(facts, played)) return undefined
    const here = inQuotes(block)
    if (block.resistance.kind !== 'allOff') {
      const text = `${here} is ridden ${amountOfKnob(under, ride.bike)} under base.`
      return {
        rule: 'underBase',
        severity: 'warning',
        text,
        why: WHY,
        amount: under,
        fixes: () => [resistanceFix(facts, index, base, excess)],
      }
    }
    const asks = cadence.kind === 'turning'
    const text = asks
      ? `${here} takes all resistance off and asks for a cadence: legs could run away.`
      : `${here} takes all resistance off: only to roll loose legs.`
    const fixes = [totalFix(facts, index, base, 'Keep it at base', `Kept ${here} at base`)]
    return { rule: 'allOff', severity: asks ? 'problem' : 'hint', text, why: WHY, amount: under, fixes }
  })
}
