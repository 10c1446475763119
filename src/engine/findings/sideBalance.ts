import { accentsOf, imbalanceOf, type Sides } from '#engine/cadence/balanceSides.ts'
import { otherFoot } from '#engine/cadence/trackFeet.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { editSection } from '#plan/edits.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, fix, ofRide, quotedSection } from './finding.ts'

/** One leg taking clearly more accents than the other over the class. */
export function sideBalance(facts: Facts): Finding[] {
  const { balance, rules } = facts
  const { right, left, imbalance } = balance
  if (imbalance === null || imbalance <= rules.balanceHint) return []
  const [more, less] = right > left ? (['right', 'left'] as const) : (['left', 'right'] as const)
  const text = say('checksRide.sideBalance', { more, most: balance[more], less, least: balance[less] })
  const severity = imbalance > rules.balanceWarning ? 'warning' : 'hint'
  return [
    ofRide({ rule: 'sideBalance', severity, text, why: COMMON_PRACTICE, amount: imbalance, fixes: () => [otherLead(facts, imbalance)] }),
  ]
}

/** The one song whose other lead foot evens the class out best. */
function otherLead(facts: Facts, imbalance: number): Fix | undefined {
  const { balance, rules, ride } = facts
  let best: { index: number; imbalance: number } | undefined
  for (const [index, section] of ride.sections.entries()) {
    const own = section.lead && accentsOfLead(facts, index)
    if (!own) continue
    const swapped = { right: balance.right - own.right + own.left, left: balance.left - own.left + own.right }
    const then = imbalanceOf(swapped, rules.balanceSilentBelow) ?? 0
    if (then < (best?.imbalance ?? imbalance)) best = { index, imbalance: then }
  }
  if (!best) return undefined
  const { id, lead } = ride.sections[best.index]!
  const foot = otherFoot(lead!)
  const said = { song: quotedSection(facts, best.index), foot }
  return fix(say('checksRide.leadWith', said), say('checksRide.ledWith', said), (before) =>
    editSection(before, id, (section) => ({ ...section, lead: foot })),
  )
}

/** Accents that follow a section's lead foot, up to the first block that names a foot itself. */
function accentsOfLead({ ride, timeline, footings, sections }: Facts, index: number): Sides {
  const sides = { right: 0, left: 0 }
  const { from, to } = sections[index]!.blocks
  for (let i = from; i < to; i++) {
    const played = timeline.blocks[i]!
    if (played.block.lead === 'left' || played.block.lead === 'right') break
    if (played.rideTo <= played.rideFrom) continue
    const own = accentsOf(played, ride.sections[index]!, footings[i]!)
    sides.right += own.right
    sides.left += own.left
  }
  return sides
}
