import type { Finding } from '#engine/report.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE, ofRide, quoted } from './finding.ts'

const FIRST_CLASS = 'Brogan and others 2017, Am J Med 130:484–487: muscle breakdown after a first class'

/** The trade's cautions, each where the plan gives cause for it. */
export function safety(facts: Facts): Finding[] {
  return [...newcomers(facts), ...allOut(facts)]
}

/** Hard efforts in a class that people come to for the first time. */
function newcomers({ ride, recovery, rules }: Facts): Finding[] {
  const [first] = recovery.bouts
  if (ride.level !== 'beginner' || !first) return []
  const text = `Newcomers build up slowly: before the first effort of ${formatNumber(rules.hardEffort)} or more, give them a ceiling and leave to sit out.`
  return [ofRide({ rule: 'newcomers', severity: 'hint', text, why: FIRST_CLASS }, first.from)]
}

/** The first effort with nothing held back. */
function allOut(facts: Facts): Finding[] {
  const first = facts.blocks.find(({ block, from, to }) => block.allOut && to > from)
  if (!first) return []
  const text = `${quoted(facts, first.index)} is all-out: riders with symptoms or a known condition need clearance where your screening says so; stop on dizziness, chest pain or unusual breathlessness.`
  return [atBlock(facts, first.index, { rule: 'allOutCare', severity: 'hint', text, why: COMMON_PRACTICE })]
}
