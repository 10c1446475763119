import { useId, useMemo } from 'react'
import { repairAll } from '#engine/repairAll.ts'
import type { Finding } from '#engine/report.ts'
import { FindingRow } from '#features/drafting/findings/FindingRow.tsx'
import { kindWords } from '#features/drafting/findings/kindWords.ts'
import type { Kind } from '#features/drafting/findings/sorting.ts'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import { putAside } from '#plan/commands/putAside.ts'
import { useAppStore } from '#store/useApp.ts'
import { IconButton } from '#ui/IconButton.tsx'
import { Source } from '#ui/Source.tsx'
import { tell, words } from '#words/words.ts'

interface KindRowProps {
  kind: Kind
  open: boolean
  onToggle: () => void
  readOnly: boolean
  onGo: (finding: Finding) => void
}

/** Findings that say the same of several places: what it is in one row, with what can be done about all of them, and the places behind it. */
export function KindRow({ kind, open, onToggle, readOnly, onGo }: KindRowProps) {
  const store = useAppStore()
  const places = useId()
  const { findings, severity, rule } = kind
  const { checkList } = words
  const kindName = kindWords(rule) ?? tell(findings[0]!.text)
  const count = findings.length
  const ids = findings.map(({ id }) => id)
  const repairable = findings.filter(({ fixes }) => fixes.length > 0).map(({ id }) => id)
  // The command remembers nothing, so a new one for the same findings would only draw its button again.
  const known = repairable.join(' ')
  const repair = useMemo(() => repairAll(known.split(' ')), [known])
  return (
    <li data-severity={severity} data-kind={rule}>
      <button
        type="button"
        className="finding-count"
        aria-expanded={open}
        aria-controls={places}
        aria-label={checkList.placesOf({ count, kind: kindName })}
        onClick={onToggle}
      >
        {checkList.places({ count })}
      </button>
      <p>
        {severity === 'problem' && <strong>{checkList.toFix} </strong>}
        {kindName} <Source text={tell(findings[0]!.why)} />
      </p>
      {!readOnly && (
        <>
          <div className="finding-fixes">
            {repairable.length > 1 && (
              <PreviewButton command={repair}>
                {repairable.length < count ? checkList.fixSome({ count: repairable.length, of: count }) : checkList.fixAll({ count })}
              </PreviewButton>
            )}
          </div>
          <IconButton
            tone="quiet"
            className="finding-aside"
            label={checkList.hideAll({ count })}
            onClick={() => store.getState().run(putAside(ids))}
          >
            ×
          </IconButton>
        </>
      )}
      <ul id={places} className="finding-places" hidden={!open}>
        {open && findings.map((finding) => <FindingRow key={finding.id} finding={finding} readOnly={readOnly} onGo={onGo} />)}
      </ul>
    </li>
  )
}
