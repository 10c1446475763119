import { sizeAt } from '#engine/anotherBike/turnsAt.ts'
import { knobSize } from '#engine/ledger/knobSize.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import type { KnobSteps } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE } from './finding.ts'
import { statedFix } from './fixes/resistanceFix.ts'

/**
 * Riders who have long been far apart on the knob: a stated total, or a checkpoint, would bring them together. Where an
 * end is open nobody knows how far, which is another finding (`openEnd`).
 */
export function wideSpread(facts: Facts): Finding[] {
  const { blocks, rules } = facts
  const isWide = (played: PlayedBlock) => spreadOf(played) > 0 && spreadOf(played) > sizeAt(facts, played, rules.spreadTotal)
  const found: Finding[] = []
  let first = 0
  while (first < blocks.length) {
    let end = first
    // A checkpoint tells riders where to be, so the stretch before it ends there.
    while (end < blocks.length && isWide(blocks[end]!) && !(end > first && blocks[end]!.ledger.checkpoint)) end++
    if (end > first) {
      const lasts = blocks[end - 1]!.to - blocks[first]!.from
      if (lasts > rules.spreadSeconds && !blocks[first]!.ledger.checkpoint) found.push(tell(facts, first, end, lasts))
    }
    first = Math.max(end, first + 1)
  }
  return found
}

/** How far riders may be apart, as far as that is known. */
const spreadOf = ({ ledger: { after } }: PlayedBlock): KnobSteps => (after.low === null || after.high === null ? 0 : after.high - after.low)

function tell(facts: Facts, first: number, end: number, lasts: number): Finding {
  const { blocks, ride } = facts
  const spread = Math.max(...blocks.slice(first, end).map(spreadOf))
  const total = blocks[first]!.ledger.after.nominal
  return atBlock(facts, first, {
    rule: 'wideSpread',
    severity: 'hint',
    text: say('checksKnob.wideSpread', { seconds: lasts, size: knobSize(spread, ride.bike) }),
    why: COMMON_PRACTICE,
    amount: lasts,
    fixes: () => [statedFix(facts, first, total)],
  })
}
