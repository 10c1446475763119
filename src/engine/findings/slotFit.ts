import type { Finding } from '#engine/report.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, ofRide } from './finding.ts'

/** A ride longer than its slot, or so short that time is left over even after a late start. */
export function slotFit({ overall, rules, ride }: Facts): Finding[] {
  const { slack, total } = overall
  const why = COMMON_PRACTICE
  if (slack < -1e-6) {
    const text = say('checksRide.slotOverrun', { over: -slack, length: overall.slot })
    return [ofRide({ rule: 'slotOverrun', severity: 'problem', text, why, amount: -slack }, overall.slot)]
  }
  const spare = slack - rules.startDrift - rules.fitUnder
  if (spare <= 0 || ride.sections.length === 0) return []
  const text = say('checksRide.slotUnused', { left: slack })
  return [ofRide({ rule: 'slotUnused', severity: 'hint', text, why, amount: spare }, total)]
}
