import type { SheetContents } from '#features/sheet/contents/contents.ts'
import type { SheetPlan } from '#features/sheet/paging/fitSheet.ts'
import { sheetStyle } from '#features/sheet/paging/measureSheet.ts'
import { MARGIN, type Paper, pageSize } from '#features/sheet/paging/paper.ts'
import { BandView } from './BandView.tsx'
import { columnStyle } from './columnStyle.ts'
import { ColumnHead, PageFooter, PageHeader } from './PageParts.tsx'

export interface SheetPagesProps {
  contents: SheetContents
  plan: SheetPlan
  paper: Paper
}

/** The pages as they are previewed and printed: the same elements for both. */
export function SheetPages({ contents, plan, paper }: SheetPagesProps) {
  const { layout, detail, cap, pages } = plan
  const { width, height } = pageSize(paper, layout)
  return (
    <div
      className="sheet-pages sheet-paper"
      data-theme="light"
      data-words={layout.words}
      data-detail={detail}
      style={{ ...sheetStyle(paper, layout, cap), ...columnStyle(contents.widths) }}
    >
      <style>{`@page { size: ${width}mm ${height}mm; margin: 0 }`}</style>
      {pages.map((columns, page) => (
        <article
          // biome-ignore lint/suspicious/noArrayIndexKey: a page is its place
          key={page}
          className="sheet-page"
          aria-label={`page ${page + 1} of ${pages.length}`}
          style={{ width: `${width}mm`, height: `${height}mm`, padding: `${MARGIN}mm` }}
        >
          <div className="sheet-page-inner">
            <PageHeader contents={contents} page={page + 1} pages={pages.length} />
            <div className="sheet-columns">
              {columns.map((pieces) => (
                <div key={`${pieces[0]!.band}.${pieces[0]!.from}`} className="sheet-column">
                  <ColumnHead heads={contents.heads} />
                  {pieces.map((piece) => (
                    <BandView key={piece.band} band={contents.bands[piece.band]!} from={piece.from} to={piece.to} />
                  ))}
                </div>
              ))}
            </div>
            <PageFooter contents={contents} />
          </div>
        </article>
      ))}
    </div>
  )
}
