import type { SheetContents } from '#features/sheet/contents/contents.ts'
import { LegendMarkView } from './marks.tsx'

/** Top of every page: what this is, what it is for, and the figures of the whole ride. */
export function PageHeader({ contents, page, pages }: { contents: SheetContents; page: number; pages: number }) {
  return (
    <header className="sheet-header" data-part="header">
      <h2>
        <b>{contents.title}</b>
        {contents.aim && <span> {contents.aim}</span>}
      </h2>
      <p>
        {contents.facts.join(' · ')} · {contents.stamp}
        {pages > 1 && ` · page ${page} of ${pages}`}
      </p>
    </header>
  )
}

/** What the numbers of a row are; the same for every column. */
export function ColumnHead({ heads }: Pick<SheetContents, 'heads'>) {
  return (
    <div className="sheet-column-head" data-part="columnHead" aria-hidden="true">
      <span className="sheet-bar-head" />
      <span className="sheet-data">
        <span className="sheet-effort" />
        <span className="sheet-ride">ride</span>
        <span className="sheet-song">{heads.song}</span>
        <span className="sheet-length">{heads.length}</span>
        <span className="sheet-mark-head" />
        <span className="sheet-mark-head" />
        <span className="sheet-total">total</span>
        <span className="sheet-call" />
      </span>
    </div>
  )
}

/** Foot of every page: the shorthand, and what comes before any plan. */
export function PageFooter({ contents }: { contents: SheetContents }) {
  return (
    <footer className="sheet-footer" data-part="footer">
      <ul className="sheet-legend">
        {contents.legend.map(({ mark, text }) => (
          <li key={text}>
            <LegendMarkView mark={mark} /> {text}
          </li>
        ))}
      </ul>
      <p>{contents.safety}</p>
    </footer>
  )
}
