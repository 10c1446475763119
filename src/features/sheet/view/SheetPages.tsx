import type { ReactElement } from 'react'
import { sheetStyle } from '#features/sheet/paging/measureSheet.ts'
import type { Column } from '#features/sheet/paging/packBands.ts'
import { type Layout, marginOf, type Paper, pageSize } from '#features/sheet/paging/paper.ts'
import { words } from '#words/words.ts'
import { CutMarks } from './CutMarks.tsx'
import type { SheetParts } from './sheetParts.ts'
import type { LaidSheet } from './useSheetPlan.ts'

interface SheetPagesProps {
  parts: SheetParts
  plan: LaidSheet
  paper: Paper
  /** Cards to be cut, four on a page. */
  fourUp?: boolean
  /** Index of the one page that is shown; all unless given. */
  only?: number
}

/** The pages as they are previewed and printed: the same elements for both. */
export function SheetPages({ parts, plan, paper, fourUp = false, only }: SheetPagesProps) {
  const { layout, detail, cap, pages, names, columnStyle } = plan
  const size = printedSize(paper, layout, fourUp)
  const views = pages.map((columns, page) => (
    <SheetPage
      // biome-ignore lint/suspicious/noArrayIndexKey: a page is its place
      key={page}
      {...{ parts, paper, layout, columns, names, page, pages: pages.length }}
    />
  ))
  return (
    <div
      className="sheet-pages sheet-paper"
      data-theme="light"
      data-sheet={parts.kind}
      data-words={layout.words}
      data-detail={detail}
      style={{ ...sheetStyle(paper, layout, cap), ...columnStyle }}
    >
      <style>{`@page { size: ${size.width}mm ${size.height}mm; margin: 0 }`}</style>
      {fourUp
        ? foursOf(views).map((four, sheet) => <CutSheet key={four[0]!.key} cards={four} sheet={sheet} size={size} />)
        : only === undefined
          ? views
          : views[only]}
    </div>
  )
}

/** Size of what the printer takes: a page, or the paper that four cards lie on. */
export const printedSize = (paper: Paper, layout: Layout, fourUp: boolean) =>
  pageSize(paper, fourUp ? { ...layout, page: 'sheet' } : layout)

interface SheetPageProps {
  parts: SheetParts
  paper: Paper
  layout: Layout
  columns: Column[]
  names: LaidSheet['names']
  page: number
  pages: number
}

function SheetPage({ parts, paper, layout, columns, names, page, pages }: SheetPageProps) {
  const { width, height } = pageSize(paper, layout)
  return (
    <article
      className="sheet-page"
      aria-label={words.sheet.page({ page: page + 1, of: pages })}
      style={{ width: `${width}mm`, height: `${height}mm`, padding: `${marginOf(layout)}mm` }}
    >
      <div className="sheet-page-inner">
        {parts.header(page + 1, pages)}
        <div className="sheet-columns">
          {columns.map((pieces) => (
            <div key={`${pieces[0]!.band}.${pieces[0]!.from}`} className="sheet-column">
              {parts.columnHead}
              {pieces.map((piece) => (
                <div key={piece.band} className="sheet-piece">
                  {parts.bands[piece.band]!.view(piece.from, piece.to, names?.[piece.band])}
                </div>
              ))}
            </div>
          ))}
        </div>
        {parts.footer}
      </div>
    </article>
  )
}

interface CutSheetProps {
  cards: ReactElement[]
  sheet: number
  size: { width: number; height: number }
}

function CutSheet({ cards, sheet, size: { width, height } }: CutSheetProps) {
  return (
    <section
      className="sheet-cut"
      aria-label={words.sheet.cutSheet({ page: sheet + 1 })}
      style={{ width: `${width}mm`, height: `${height}mm` }}
    >
      {cards}
      <CutMarks width={width} height={height} />
    </section>
  )
}

const foursOf = (views: ReactElement[]): ReactElement[][] =>
  Array.from({ length: Math.ceil(views.length / 4) }, (_, sheet) => views.slice(sheet * 4, sheet * 4 + 4))
