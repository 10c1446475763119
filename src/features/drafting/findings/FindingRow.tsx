import type { Finding } from '#engine/report.ts'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import { putAside } from '#plan/commands/putAside.ts'
import { useAppStore } from '#store/useApp.ts'
import { IconButton } from '#ui/IconButton.tsx'
import { Source } from '#ui/Source.tsx'
import { clock } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

interface FindingRowProps {
  finding: Finding
  readOnly: boolean
  onGo: (finding: Finding) => void
}

/** One finding: its place, what and why, and what can be done about it. */
export function FindingRow({ finding, readOnly, onGo }: FindingRowProps) {
  const store = useAppStore()
  return (
    <li data-severity={finding.severity}>
      <FindingPlace finding={finding} onGo={onGo} />
      <p>
        {finding.severity === 'problem' && <strong>{words.checkList.toFix} </strong>}
        {tell(finding.text)} {finding.heldBack && !readOnly && <span>{tell(finding.heldBack)} </span>}
        {finding.shownAs && <span>{tell(finding.shownAs)} </span>}
        <Source text={tell(finding.why)} />
      </p>
      {!readOnly && (
        <>
          <div className="finding-fixes">
            {finding.fixes.map((fix) => (
              <PreviewButton key={tell(fix.label)} command={fix.command}>
                {tell(fix.label)}
              </PreviewButton>
            ))}
          </div>
          <IconButton
            tone="quiet"
            className="finding-aside"
            label={words.checkList.hide}
            onClick={() => store.getState().run(putAside([finding.id]))}
          >
            ×
          </IconButton>
        </>
      )}
    </li>
  )
}

/** Where a finding is, as a way there. */
export function FindingPlace({ finding, onGo }: Pick<FindingRowProps, 'finding' | 'onGo'>) {
  return (
    <button type="button" className="finding-place" onClick={() => onGo(finding)} title={words.checkList.goThere}>
      {finding.sectionId === undefined && finding.blockId === undefined ? words.checkList.ofRide : clock(finding.at)}
    </button>
  )
}
