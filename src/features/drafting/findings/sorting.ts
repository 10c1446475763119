import type { RuleName } from '#engine/findings/ruleNames.ts'
import type { Finding, Severity } from '#engine/report.ts'

/** What findings are sorted by, the weightiest first. */
export const SEVERITIES: readonly Severity[] = ['problem', 'warning', 'hint']

/** Which findings are looked at. */
export interface Filter {
  severity: Severity | 'all'
  /** A section's id, or those of the ride as a whole. */
  place: 'everywhere' | 'ride' | (string & {})
}

export const EVERYTHING: Filter = { severity: 'all', place: 'everywhere' }

interface Sorted {
  /** To be looked at now, in the order of the ride. */
  open: Finding[]
  /** About the class as a whole, once it fills its slot. */
  later: Finding[]
  /** Hidden: they are intentional. */
  aside: Finding[]
}

/** Findings by what is to be done with them. */
export function sortFindings(findings: readonly Finding[], setAside: readonly string[] = []): Sorted {
  const aside = new Set(setAside)
  const sorted: Sorted = { open: [], later: [], aside: [] }
  for (const finding of findings) sorted[aside.has(finding.id) ? 'aside' : finding.later ? 'later' : 'open'].push(finding)
  return sorted
}

/** Findings of one rule and one weight: one row of the list. */
export interface Kind {
  key: string
  rule: RuleName
  severity: Severity
  /** In the order of the ride; one at least. */
  findings: Finding[]
}

/** Findings by what they are about: the weightiest first, then in the order of the ride by the first of each. */
export function byKind(findings: readonly Finding[]): Kind[] {
  const kinds = new Map<string, Kind>()
  for (const finding of findings) {
    const { rule, severity } = finding
    const key = `${severity}:${rule}`
    const kind = kinds.get(key)
    if (kind) kind.findings.push(finding)
    else kinds.set(key, { key, rule, severity, findings: [finding] })
  }
  return SEVERITIES.flatMap((severity) => [...kinds.values()].filter((kind) => kind.severity === severity))
}

/** Those a filter leaves. */
export const filtered = (findings: readonly Finding[], { severity, place }: Filter): Finding[] =>
  findings.filter(
    (finding) => (severity === 'all' || finding.severity === severity) && (place === 'everywhere' || placeOf(finding) === place),
  )

/** How many findings each section has, and the ride as a whole, by the place's name in a filter. */
export function countByPlace(findings: readonly Finding[]): Map<string, number> {
  const counts = new Map<string, number>()
  for (const finding of findings) counts.set(placeOf(finding), (counts.get(placeOf(finding)) ?? 0) + 1)
  return counts
}

const placeOf = ({ sectionId }: Finding): string => sectionId ?? 'ride'
