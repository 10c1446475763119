import { knobSize } from '#engine/ledger/knobSize.ts'
import type { Finding } from '#engine/report.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { eachBlock } from './finding.ts'
import { type Excess, resistanceFix, totalFix } from './fixes/resistanceFix.ts'
import { needOf } from './needOf.ts'

const WHY = say('sources.neverNoResistance')

/** Legs turning with the knob all the way off, or under the base at which riders control the pedals. Blocks that need more than base are told that instead. */
export function underBase(facts: Facts): Finding[] {
  const { ride, ledger } = facts
  const { base } = ledger.limits
  const excess: Excess = (_, after) => base - after.nominal
  return eachBlock(facts, (played) => {
    const { index, block, cadence } = played
    const under = excess(played.ledger.before, played.ledger.after)
    if (under <= 0 || cadence.kind === 'still' || needOf(facts, played)) return undefined
    const here = quotedItem(block)
    if (block.resistance.kind !== 'allOff') {
      return {
        rule: 'underBase',
        severity: 'warning',
        text: say('checksKnob.underBase', { block: here, size: knobSize(under, ride.bike) }),
        why: WHY,
        amount: under,
        fixes: () => [resistanceFix(facts, index, base, excess)],
      }
    }
    const asks = cadence.kind === 'turning'
    const text = say(asks ? 'checksKnob.allOffAtPace' : 'checksKnob.allOff', { block: here })
    const fixes = [totalFix(facts, index, base, say('checksKnob.keepAtBase'), say('checksKnob.keptAtBase', { block: here }))]
    return { rule: 'allOff', severity: asks ? 'problem' : 'hint', text, why: WHY, amount: under, fixes }
  })
}
