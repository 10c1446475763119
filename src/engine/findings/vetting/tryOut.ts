import type { Finding, Fix, Severity } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'

export type FindingsOf = (ride: Ride) => readonly Finding[]

/** What a repair does to a finding: whether it helps, and otherwise what it brings that weighs as much. */
export interface Verdict {
  helps: boolean
  brings?: { finding: Finding; isNew: boolean }
}

/** A repair and the ride it gives; that ride is only computed when a verdict is asked for. */
export interface Trial {
  ride: Ride
  verdictOn: (finding: Finding) => Verdict
  /** Whether nothing of a finding is left. */
  clears: (finding: Finding) => boolean
}

/** Amounts that differ by less are the same figure reached another way. */
const ROUNDING = 1e-6

export function tryOut({ command }: Fix, ride: Ride, before: ReadonlyMap<string, Finding>, findingsOf: FindingsOf): Trial {
  const next = command.apply(ride)
  let computed: { after: ReadonlyMap<string, Finding>; worse: readonly Finding[] } | undefined
  const then = () => {
    if (!computed) {
      const after = new Map(findingsOf(next).map((finding) => [finding.id, finding]))
      computed = {
        after,
        worse: [...after.values()]
          .filter((finding) => isWorse(finding, before.get(finding.id)))
          .sort((a, b) => WEIGHT[b.severity] - WEIGHT[a.severity]),
      }
    }
    return computed
  }
  return {
    ride: next,
    verdictOn: (finding) => {
      if (next === ride) return { helps: false }
      const { after, worse } = then()
      const left = after.get(finding.id)
      if (left && (left.amount ?? 1) >= (finding.amount ?? 1) - ROUNDING) return { helps: false }
      const brings = worse.find(({ id, severity }) => id !== finding.id && WEIGHT[severity] >= WEIGHT[finding.severity])
      return brings ? { helps: false, brings: { finding: brings, isNew: !before.has(brings.id) } } : { helps: true }
    },
    clears: ({ id }) => !then().after.has(id),
  }
}

/** New, or more of it than before. */
const isWorse = (after: Finding, before: Finding | undefined): boolean =>
  before === undefined || WEIGHT[after.severity] > WEIGHT[before.severity] || (after.amount ?? 0) > (before.amount ?? 0) + ROUNDING

export const WEIGHT: Record<Severity, number> = { hint: 0, warning: 1, problem: 2 }
