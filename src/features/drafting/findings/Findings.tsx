import { useDeferredValue, useMemo, useState } from 'react'
import type { Finding } from '#engine/report.ts'
import { FindingFilter } from '#features/drafting/findings/FindingFilter.tsx'
import { FindingRow } from '#features/drafting/findings/FindingRow.tsx'
import { FoldedFindings } from '#features/drafting/findings/FoldedFindings.tsx'
import { EVERYTHING, filtered, SEVERITIES, sortFindings } from '#features/drafting/findings/sorting.ts'
import { bringBack } from '#plan/commands/putAside.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import './findings.css'

/** Rows shown before the rest is asked for. */
const FIRST = 8

interface FindingsProps {
  readOnly: boolean
  onGo: (finding: Finding) => void
}

/**
 * What the engine noticed, in the order of the ride, the weightier first where two share a moment. A row
 * leads to its place; a repair shows itself on the curve while it is pointed at, and is one undo step when
 * taken. What is meant so is put aside, and what only a filled ride can be judged by waits, both at the end.
 */
export function Findings({ readOnly, onGo }: FindingsProps) {
  const store = useAppStore()
  // Of the committed ride or of the one received, never of a preview: rows that came and went during a drag could not be read.
  const noticed = useApp((state) => (state.received ?? state).report?.findings)
  const judged = useApp((state) => (state.received ?? state).ride)
  // The stage shows a change first.
  const { findings, ride } = useDeferredValue(useMemo(() => ({ findings: noticed, ride: judged }), [noticed, judged]))
  const setAside = ride?.setAside
  const { open, later, aside } = useMemo(() => sortFindings(findings ?? [], setAside), [findings, setAside])
  const [filter, setFilter] = useState(EVERYTHING)
  const [all, setAll] = useState(false)
  if (!findings) return null

  const many = open.length > FIRST
  // A filter that was set while there were many must not hide the few that are left, nor one for a song that is gone.
  const gone = filter.place !== 'everywhere' && filter.place !== 'ride' && !ride?.sections.some(({ id }) => id === filter.place)
  const held = gone ? { ...filter, place: 'everywhere' } : filter
  const chosen = many ? filtered(open, held) : open
  const shown = all ? chosen : chosen.slice(0, FIRST)
  return (
    <section className="findings" aria-label="findings">
      <h2>findings {!many && <span className="findings-count">{summary(open) || (aside.length > 0 ? 'none left' : NOTHING)}</span>}</h2>
      {many && <FindingFilter findings={open} filter={held} onFilter={setFilter} />}
      <ul>
        {shown.map((finding) => (
          <FindingRow key={finding.id} finding={finding} readOnly={readOnly} onGo={onGo} />
        ))}
      </ul>
      {many && chosen.length === 0 && <p className="findings-none">None of these here.</p>}
      {chosen.length > FIRST && (
        <Button tone="quiet" onClick={() => setAll(!all)}>
          {all ? 'show fewer' : `show all ${chosen.length}`}
        </Button>
      )}
      <FoldedFindings title="when the ride is filled" findings={later} onGo={onGo} />
      <FoldedFindings
        title="meant so"
        findings={aside}
        onGo={onGo}
        action={
          readOnly
            ? undefined
            : (finding) => (
                <Button tone="quiet" onClick={() => store.getState().run(bringBack(finding.id))}>
                  bring back
                </Button>
              )
        }
      />
    </section>
  )
}

const NOTHING = 'nothing to mend: the ride adds up'

const summary = (findings: readonly Finding[]): string =>
  SEVERITIES.map(({ severity, words }) => ({ words, count: filtered(findings, { severity, place: 'everywhere' }).length }))
    .filter(({ count }) => count > 0)
    .map(({ count, words }) => `${count} ${words}`)
    .join(', ')
