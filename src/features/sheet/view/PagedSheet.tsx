import { Fragment, type ReactNode, useRef } from 'react'
import type { SheetJob } from '#features/sheet/jobs.ts'
import type { Paper } from '#features/sheet/paging/paper.ts'
import { words } from '#words/words.ts'
import { SheetPages } from './SheetPages.tsx'
import { SheetPreview } from './SheetPreview.tsx'
import type { SheetParts } from './sheetParts.ts'
import { type LaidSheet, useSheetPlan } from './useSheetPlan.ts'
import './page.css'

interface PagedSheetProps {
  /** Another object whenever the sheet says something else. */
  parts: SheetParts
  paper: Paper
  job: SheetJob
  /** Cards to be cut, four on a page. */
  fourUp?: boolean
  /** The distance the sheet is made for is said with the size of its type; words that follow the number of pages. */
  children?: (plan: LaidSheet) => ReactNode
}

/** A sheet previewed as the pages that are printed, their breaks measured and not guessed. */
export function PagedSheet({ parts, paper, job, fourUp, children }: PagedSheetProps) {
  const host = useRef<HTMLDivElement>(null)
  const plan = useSheetPlan(host, parts, paper, job)
  return (
    <>
      <div className="sheet-measure-frame">
        <div ref={host} className="sheet-measure sheet-paper" data-sheet={parts.kind} aria-hidden="true">
          {/* Two digits of pages, so that a header never grows when the pages are counted. */}
          {parts.header(10, 10)}
          {parts.columnHead}
          <div className="sheet-gap" data-part="gap" />
          {parts.bands.map((band) => (
            <Fragment key={band.id}>
              <div data-measured="whole">{band.view()}</div>
              {/* The head alone, as it stands where the band goes on. */}
              <div data-measured="again">{band.view(1, 1)}</div>
            </Fragment>
          ))}
          {parts.footer}
        </div>
      </div>
      {plan ? (
        <>
          {children?.(plan)}
          <SheetPreview plan={plan} paper={paper} fourUp={fourUp}>
            <SheetPages parts={parts} plan={plan} paper={paper} fourUp={fourUp} />
          </SheetPreview>
        </>
      ) : (
        <p className="sheet-waiting" role="status">
          {words.sheet.layingOut}
        </p>
      )}
    </>
  )
}
