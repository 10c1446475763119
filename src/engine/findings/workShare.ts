import type { Finding } from '#engine/report.ts'
import { mostWork } from '#engine/shape/mostWork.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, ofRide } from './finding.ts'

/** More of the class at working effort than its level takes. */
export function workShare({ ride, rules, overall }: Facts): Finding[] {
  const most = mostWork(ride.level, rules)
  const share = overall.workShare * 100
  if (share <= most + 1e-9) return []
  const article = ride.level === 'advanced' ? 'an' : 'a'
  const text = `${Math.round(share)} % of the riding is at effort ${formatNumber(rules.workEffort)} or more; for ${article} ${ride.level} class ${formatNumber(most)} % is usual.`
  return [ofRide({ rule: 'workShare', severity: 'warning', text, why: COMMON_PRACTICE, amount: share - most })]
}
