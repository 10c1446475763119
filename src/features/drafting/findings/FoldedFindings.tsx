import type { ReactNode } from 'react'
import type { Finding } from '#engine/report.ts'
import { FindingPlace } from '#features/drafting/findings/FindingRow.tsx'
import { Disclosure } from '#ui/Disclosure.tsx'
import { Source } from '#ui/Source.tsx'
import { tell } from '#words/words.ts'

interface FoldedFindingsProps {
  summary: string
  findings: readonly Finding[]
  onGo: (finding: Finding) => void
  /** What can be done with one. */
  action?: ((finding: Finding) => ReactNode) | undefined
}

/** Findings that are not to be looked at now, in a fold that says how many. Nothing where there are none. */
export function FoldedFindings({ summary, findings, onGo, action }: FoldedFindingsProps) {
  if (findings.length === 0) return null
  return (
    <Disclosure className="finding-fold" summary={summary}>
      <ul>
        {findings.map((finding) => (
          <li key={finding.id}>
            <FindingPlace finding={finding} onGo={onGo} />
            <p>
              {tell(finding.text)} <Source text={tell(finding.why)} />
            </p>
            {action && <div className="finding-fixes">{action(finding)}</div>}
          </li>
        ))}
      </ul>
    </Disclosure>
  )
}
