import type { Finding } from '#engine/report.ts'
import { mostWork } from '#engine/shape/mostWork.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, ofRide } from './finding.ts'

/** More of the class at working effort than its level takes. */
export function workShare({ ride, rules, overall }: Facts): Finding[] {
  const most = mostWork(ride.level, rules)
  const share = overall.workShare * 100
  if (share <= most + 1e-9) return []
  const text = say('checksRide.workShare', { share: overall.workShare, from: rules.workEffort, level: ride.level, most: most / 100 })
  return [ofRide({ rule: 'workShare', severity: 'warning', text, why: COMMON_PRACTICE, amount: share - most })]
}
