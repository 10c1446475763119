import { computeRide } from '#engine/computeRide.ts'
import type { Finding, Severity } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { told } from '#tests/support/told.ts'

const WEIGHT: Record<Severity, number> = { hint: 0, warning: 1, problem: 2 }
const ROUNDING = 1e-6

/** What every repair of every finding of a ride does, each tried on its own by computing the ride anew. */
export function everyRepair(ride: Ride): { tried: number; byRule: Map<string, number>; troubles: string[] } {
  const { findings } = computeRide(ride)
  const troubles: string[] = []
  const byRule = new Map<string, number>()
  let tried = 0
  for (const finding of findings) {
    for (const { label, command } of finding.fixes) {
      tried++
      byRule.set(finding.rule, (byRule.get(finding.rule) ?? 0) + 1)
      const next = command.apply(ride)
      const after = computeRide(next).findings
      for (const trouble of troublesOf(finding, findings, after, next === ride)) troubles.push(`${finding.id}: “${label}” ${trouble}`)
    }
  }
  return { tried, byRule, troubles }
}

function troublesOf(finding: Finding, before: readonly Finding[], after: readonly Finding[], same: boolean): string[] {
  const troubles = same ? ['changes nothing'] : []
  const left = after.find(({ id }) => id === finding.id)
  if (left && !((left.amount ?? 1) < (finding.amount ?? 1))) troubles.push(`leaves ${left.amount} of ${finding.amount}`)
  for (const other of heavierThanBefore(before, after))
    if (other.id !== finding.id && WEIGHT[other.severity] >= WEIGHT[finding.severity])
      troubles.push(`brings ${other.id}: ${told(other.text)}`)
  return troubles
}

/** Findings that are new, weigh more, or have grown. */
export function heavierThanBefore(before: readonly Finding[], after: readonly Finding[]): Finding[] {
  const known = new Map(before.map((finding) => [finding.id, finding]))
  return after.filter((finding) => {
    const was = known.get(finding.id)
    return !was || WEIGHT[finding.severity] > WEIGHT[was.severity] || (finding.amount ?? 0) > (was.amount ?? 0) + ROUNDING
  })
}
