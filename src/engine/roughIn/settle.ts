import { computeRide } from '#engine/computeRide.ts'
import type { Finding, Severity } from '#engine/report.ts'
import { type Block, isSet, type Ride } from '#plan/model.ts'

/** A problem weighs more than any number of warnings a draft has, a warning more than its hints (own ordering). */
const WEIGHT: Record<Severity, number> = { problem: 10_000, warning: 100, hint: 1 }
/** Rides computed before the draft is left as it is. */
const TRIES = 80

/**
 * A draft after the engine's own repairs: each that a rule proposes is tried where a finding offers it, and kept where
 * what is noticed gets less. Only the drafted sections are touched. Deterministic; at most 80
 * computations of the ride.
 */
export function settle(ride: Ride, drafted: ReadonlySet<string>): Ride {
  let best = ride
  let findings = computeRide(ride).findings
  let weight = weightOf(findings)
  let tries = 0
  const failed = new Set<string>()
  for (;;) {
    const next = improvement()
    if (!next) return best
    best = next.ride
    findings = next.findings
    weight = next.weight
  }

  function improvement(): { ride: Ride; findings: readonly Finding[]; weight: number } | undefined {
    for (const finding of [...findings].sort((a, b) => WEIGHT[b.severity] - WEIGHT[a.severity])) {
      for (const [index, { command }] of finding.proposed.entries()) {
        const key = `${finding.id} ${index}`
        if (failed.has(key)) continue
        const changed = command.apply(best)
        if (changed === best || !touchesOnly(best, changed, drafted) || isHarder(best, changed)) continue
        if (tries++ >= TRIES) return undefined
        const after = computeRide(changed).findings
        const less = weightOf(after)
        if (less < weight) return { ride: changed, findings: after, weight: less }
        failed.add(key)
      }
    }
    return undefined
  }
}

const weightOf = (findings: readonly Finding[]): number => findings.reduce((sum, { severity }) => sum + WEIGHT[severity], 0)

/** Whether all that differs are blocks of drafted sections. */
function touchesOnly(before: Ride, after: Ride, drafted: ReadonlySet<string>): boolean {
  const { sections: old, ...head } = before
  const { sections, ...nextHead } = after
  if (old.length !== sections.length || Object.entries(nextHead).some(([key, value]) => head[key as keyof typeof head] !== value))
    return false
  return sections.every((section, index) => section === old[index] || drafted.has(section.id))
}

/** A repair that plans more effort would leave the arc and the level. */
function isHarder(before: Ride, after: Ride): boolean {
  const old = new Map(blocksOf(before).map((block) => [block.id, block]))
  return blocksOf(after).some(
    ({ id, effort }) => Math.max(effort.from, effort.to) > Math.max(old.get(id)?.effort.from ?? 0, old.get(id)?.effort.to ?? 0),
  )
}

function blocksOf(ride: Ride): Block[] {
  return ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))
}
