import { useState } from 'react'
import type { Finding, Fix } from '#engine/report.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { formatClock } from '#units/formatClock.ts'
import './findings.css'

const FIRST = 8
const WORDS = { problem: 'to mend', warning: 'to weigh', hint: 'to know' } as const

/**
 * What the engine noticed, in the order of the ride, the weightier first where two share a moment. A row
 * leads to its place; a repair shows itself on the curve while it is pointed at, and is one undo step when taken.
 */
export function Findings({ readOnly, onGo }: { readOnly: boolean; onGo: (finding: Finding) => void }) {
  // Of the committed ride or of the one received, never of a preview: rows that came and went during a drag could not be read.
  const findings = useApp((state) => (state.received ?? state).report?.findings)
  const [all, setAll] = useState(false)
  if (!findings) return null
  if (findings.length === 0) return <p className="findings-none">Nothing to mend: the ride adds up.</p>
  const shown = all ? findings : findings.slice(0, FIRST)
  return (
    <section className="findings" aria-label="findings">
      <h2>
        findings <span className="findings-count">{summary(findings)}</span>
      </h2>
      <ul>
        {shown.map((finding) => (
          <Row key={finding.id} finding={finding} readOnly={readOnly} onGo={onGo} />
        ))}
      </ul>
      {findings.length > FIRST && (
        <Button tone="quiet" onClick={() => setAll(!all)}>
          {all ? 'show fewer' : `show all ${findings.length}`}
        </Button>
      )}
    </section>
  )
}

function summary(findings: readonly Finding[]): string {
  return (['problem', 'warning', 'hint'] as const)
    .map((severity) => ({ severity, count: findings.filter((finding) => finding.severity === severity).length }))
    .filter(({ count }) => count > 0)
    .map(({ severity, count }) => `${count} ${WORDS[severity]}`)
    .join(', ')
}

function Row({ finding, readOnly, onGo }: { finding: Finding; readOnly: boolean; onGo: (finding: Finding) => void }) {
  const store = useAppStore()
  const show = (fix: Fix) => store.getState().preview(fix.command)
  const hide = () => store.getState().dropPreview()
  return (
    <li data-severity={finding.severity}>
      <button type="button" className="finding-place" onClick={() => onGo(finding)} title="show the place">
        {finding.sectionId === undefined && finding.blockId === undefined ? 'ride' : formatClock(finding.at)}
      </button>
      <p>
        {finding.severity === 'problem' && <strong>To mend: </strong>}
        {finding.text} <span className="finding-why">{finding.why}</span>
      </p>
      {!readOnly && (
        <div className="finding-fixes">
          {finding.fixes.map((fix) => (
            <Button
              key={fix.label}
              tone="action"
              onPointerEnter={() => show(fix)}
              onPointerLeave={hide}
              onFocus={() => show(fix)}
              onBlur={hide}
              onClick={() => {
                hide()
                store.getState().run(fix.command)
              }}
            >
              {fix.label}
            </Button>
          ))}
        </div>
      )}
    </li>
  )
}
