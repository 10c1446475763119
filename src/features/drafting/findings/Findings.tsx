import { useDeferredValue, useMemo, useState } from 'react'
import type { Finding } from '#engine/report.ts'
import { FindingFilter } from '#features/drafting/findings/FindingFilter.tsx'
import { FindingRow } from '#features/drafting/findings/FindingRow.tsx'
import { FoldedFindings } from '#features/drafting/findings/FoldedFindings.tsx'
import { KindRow } from '#features/drafting/findings/KindRow.tsx'
import { byKind, EVERYTHING, filtered, SEVERITIES, sortFindings } from '#features/drafting/findings/sorting.ts'
import { bringBack } from '#plan/commands/putAside.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'
import './findings.css'

/** Rows shown before the rest is asked for; a kind of finding takes one, however many places it has. */
const FIRST = 8

interface FindingsProps {
  readOnly: boolean
  onGo: (finding: Finding) => void
}

/**
 * What the engine noticed, the weightiest first, one row for one kind. A row leads to its place; a repair shows itself
 * on the curve while it is pointed at, and is one undo step when taken. What is intentional is hidden, and what only a
 * filled ride can be judged by waits, both at the end. While a change stands offered, it is the offer that is judged.
 */
export function Findings({ readOnly, onGo }: FindingsProps) {
  const store = useAppStore()
  const { checkList } = words
  // Of an offer, of the ride received or of the committed one; never of a passing preview, whose rows could not be read.
  const offering = useApp((state) => state.offering)
  const noticed = useApp((state) => (state.offering ? state.shownReport : (state.received ?? state).report)?.findings)
  const judged = useApp((state) => (state.offering ? state.shown : (state.received ?? state).ride))
  // The stage shows a change first.
  const { findings, ride } = useDeferredValue(useMemo(() => ({ findings: noticed, ride: judged }), [noticed, judged]))
  const setAside = ride?.setAside
  const { open, later, aside } = useMemo(() => sortFindings(findings ?? [], setAside), [findings, setAside])
  const [filter, setFilter] = useState(EVERYTHING)
  const [all, setAll] = useState(false)
  const [unfolded, setUnfolded] = useState<ReadonlySet<string>>(NONE)
  if (!findings) return null

  const many = byKind(open).length > FIRST
  // A filter that was set while there were many must not hide the few that are left, nor one for a song that is gone.
  const gone = filter.place !== 'everywhere' && filter.place !== 'ride' && !ride?.sections.some(({ id }) => id === filter.place)
  const held = gone ? { ...filter, place: 'everywhere' } : filter
  const kinds = byKind(many ? filtered(open, held) : open)
  const shown = all ? kinds : kinds.slice(0, FIRST)
  const fixed = readOnly || offering
  return (
    <section className="findings" aria-label={checkList.title}>
      <h2>
        {offering ? checkList.ofOffer : checkList.title}{' '}
        {!many && <span className="findings-count">{summary(open) || (aside.length > 0 ? checkList.noneLeft : checkList.nothing)}</span>}
      </h2>
      {many && <FindingFilter findings={open} filter={held} onFilter={setFilter} />}
      <ul>
        {shown.map((kind) =>
          kind.findings.length === 1 ? (
            <FindingRow key={kind.key} finding={kind.findings[0]!} readOnly={fixed} onGo={onGo} />
          ) : (
            <KindRow
              key={kind.key}
              kind={kind}
              open={unfolded.has(kind.key)}
              onToggle={() => setUnfolded(toggled(unfolded, kind.key))}
              readOnly={fixed}
              onGo={onGo}
            />
          ),
        )}
      </ul>
      {many && kinds.length === 0 && <p className="findings-none">{checkList.noneHere}</p>}
      {kinds.length > FIRST && (
        <Button tone="quiet" onClick={() => setAll(!all)}>
          {all ? checkList.showFewer : checkList.showAll({ kinds: kinds.length })}
        </Button>
      )}
      <FoldedFindings summary={checkList.later({ count: later.length })} findings={later} onGo={onGo} />
      <FoldedFindings
        summary={checkList.hidden({ count: aside.length })}
        findings={aside}
        onGo={onGo}
        action={
          fixed
            ? undefined
            : (finding) => (
                <Button tone="quiet" onClick={() => store.getState().run(bringBack(finding.id))}>
                  {checkList.unhide}
                </Button>
              )
        }
      />
    </section>
  )
}

const NONE: ReadonlySet<string> = new Set()

const toggled = (keys: ReadonlySet<string>, key: string): ReadonlySet<string> =>
  new Set(keys.has(key) ? [...keys].filter((other) => other !== key) : [...keys, key])

const summary = (findings: readonly Finding[]): string =>
  SEVERITIES.map((severity) => ({ severity, count: filtered(findings, { severity, place: 'everywhere' }).length }))
    .filter(({ count }) => count > 0)
    .map(words.checkList.counted)
    .join(' · ')
