import { useMemo, useRef } from 'react'
import type { RideReport } from '#engine/report.ts'
import type { SongClock } from '#features/sheet/contents/contents.ts'
import { sheetContents } from '#features/sheet/contents/sheetContents.ts'
import type { Paper } from '#features/sheet/paging/paper.ts'
import type { Ride } from '#plan/model.ts'
import { BandView } from './BandView.tsx'
import { columnStyle } from './columnStyle.ts'
import { ColumnHead, PageFooter, PageHeader } from './PageParts.tsx'
import { SheetPages } from './SheetPages.tsx'
import { SheetPreview } from './SheetPreview.tsx'
import { useSheetPlan } from './useSheetPlan.ts'
import './sheet.css'

export interface CompactSheetProps {
  ride: Ride
  /** The ride's own report. */
  report: RideReport
  paper: Paper
  songClock: SongClock
  /** The day of printing, ready to read. */
  date: string
}

/** The compact sheet, previewed as the pages that are printed. */
export function CompactSheet({ ride, report, paper, songClock, date }: CompactSheetProps) {
  const contents = useMemo(() => sheetContents(ride, report, { date, songClock }), [ride, report, date, songClock])
  const host = useRef<HTMLDivElement>(null)
  const plan = useSheetPlan(host, contents, paper)
  return (
    <>
      <div className="sheet-measure-frame">
        <div ref={host} className="sheet-measure sheet-paper" style={columnStyle(contents.widths)} aria-hidden="true">
          {/* Two digits of pages, so that a header never grows when the pages are counted. */}
          <PageHeader contents={contents} page={10} pages={10} />
          <ColumnHead heads={contents.heads} />
          <div className="sheet-gap" data-part="gap" />
          {contents.bands.map((band) => (
            <BandView key={band.id} band={band} />
          ))}
          <PageFooter contents={contents} />
        </div>
      </div>
      {plan ? (
        <SheetPreview plan={plan} paper={paper}>
          <SheetPages contents={contents} plan={plan} paper={paper} />
        </SheetPreview>
      ) : (
        <p role="status">Laying out the sheet…</p>
      )}
    </>
  )
}
