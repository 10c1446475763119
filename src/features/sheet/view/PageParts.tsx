import type { SheetContents } from '#features/sheet/contents/contents.ts'
import { words } from '#words/words.ts'
import { Facts } from './Facts.tsx'
import { LegendMarkView } from './marks.tsx'

/** Top of every page: what this is, what it is for, and the figures of the whole ride. */
export function PageHeader({ contents, page, pages }: { contents: SheetContents; page: number; pages: number }) {
  return (
    <header className="sheet-header" data-part="header">
      <h2>
        <b>
          <bdi>{contents.title}</bdi>
        </b>
        {contents.aim && (
          <span>
            {' '}
            <bdi>{contents.aim}</bdi>
          </span>
        )}
      </h2>
      <p>
        <Facts facts={[...contents.facts, contents.leaders, contents.stamp, pages > 1 && words.sheet.page({ page, of: pages })]} />
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
        <span className="sheet-effort" data-column="effort" />
        <span className="sheet-ride" data-column="ride">
          {heads.ride}
        </span>
        <span className="sheet-song" data-column="song">
          {heads.song}
        </span>
        <span className="sheet-length" data-column="length">
          {heads.length}
        </span>
        <span className="sheet-mark-head" />
        <span className="sheet-mark-head" />
        <span className="sheet-total-head">{heads.total}</span>
      </span>
    </div>
  )
}

/** Foot of every page: the shorthand, and what comes before any plan. */
export function PageFooter({ contents }: { contents: SheetContents }) {
  return (
    <footer className="sheet-footer" data-part="footer">
      <Legend contents={contents} />
      <p>{contents.safety}</p>
    </footer>
  )
}

function Legend({ contents }: { contents: SheetContents }) {
  return (
    <ul className="sheet-legend">
      {contents.legend.map(({ mark, text }) => (
        <li key={text}>
          <LegendMarkView mark={mark} /> <bdi>{text}</bdi>
        </li>
      ))}
    </ul>
  )
}

/** Top of a page in large type: what cannot wait, on two lines. */
export function LargeHeader({ contents, page, pages }: { contents: SheetContents; page: number; pages: number }) {
  return (
    <header className="sheet-header" data-part="header">
      <h2>
        <b>
          <bdi>{contents.title}</bdi>
        </b>
        {words.sheet.placeOf({ place: page, of: pages })}
      </h2>
      <p>
        <Facts facts={[contents.leaders, contents.stamp]} />
      </p>
    </header>
  )
}

/** The shorthand and the cautions as the last thing on the last page, where every page needs its room for songs. */
export function LegendBand({ contents, from = 0, to = 1 }: { contents: SheetContents; from?: number; to?: number }) {
  return (
    <section className="sheet-band" data-part="band">
      {from < to && (
        <div className="sheet-legend-band" data-part="row">
          <p>
            <Facts facts={contents.facts} />
          </p>
          <Legend contents={contents} />
          <p>{contents.safety}</p>
        </div>
      )}
    </section>
  )
}

/** Top of a card or a screen: just enough to know which it is. */
export function CardHeader({ contents, page, pages }: { contents: SheetContents; page: number; pages: number }) {
  return (
    <header className="sheet-header sheet-card-header" data-part="header">
      <h2>
        <bdi>{contents.title}</bdi>
      </h2>
      <span>{words.sheet.placeOf({ place: page, of: pages })}</span>
    </header>
  )
}

/** Foot of a card: whose it is, when it was printed and of which version. The shorthand is on the sheets. */
export function CardFooter({ contents }: { contents: SheetContents }) {
  return (
    <footer className="sheet-footer" data-part="footer">
      <p>
        <Facts facts={[contents.leaders, contents.stamp]} />
      </p>
    </footer>
  )
}
