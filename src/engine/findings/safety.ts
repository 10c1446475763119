import type { Finding } from '#engine/report.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE, ofRide, quoted } from './finding.ts'

const FIRST_CLASS = say('sources.firstClass')

/** The trade's cautions, each where the plan gives cause for it. */
export function safety(facts: Facts): Finding[] {
  return [...newcomers(facts), ...allOut(facts)]
}

/** Hard efforts in a class that people come to for the first time. */
function newcomers({ ride, recovery, rules }: Facts): Finding[] {
  const [first] = recovery.bouts
  if (ride.level !== 'beginner' || !first) return []
  const text = say('checksRide.newcomers', { from: rules.hardEffort })
  return [ofRide({ rule: 'newcomers', severity: 'hint', text, why: FIRST_CLASS }, first.from)]
}

/** The first effort with nothing held back. */
function allOut(facts: Facts): Finding[] {
  const first = facts.blocks.find(({ block, from, to }) => block.allOut && to > from)
  if (!first) return []
  const text = say('checksRide.allOutCare', { block: quoted(facts, first.index) })
  return [atBlock(facts, first.index, { rule: 'allOutCare', severity: 'hint', text, why: COMMON_PRACTICE })]
}
