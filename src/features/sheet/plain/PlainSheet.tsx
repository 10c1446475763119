import { useMemo } from 'react'
import type { RideReport } from '#engine/report.ts'
import { PLAIN } from '#features/sheet/jobs.ts'
import type { Paper } from '#features/sheet/paging/paper.ts'
import { AsideLine } from '#features/sheet/view/AsideLine.tsx'
import { EffortBar } from '#features/sheet/view/EffortBar.tsx'
import { Facts } from '#features/sheet/view/Facts.tsx'
import { PagedSheet } from '#features/sheet/view/PagedSheet.tsx'
import type { SheetParts } from '#features/sheet/view/sheetParts.ts'
import type { Ride } from '#plan/model.ts'
import { words } from '#words/words.ts'
import { type PlainContents, plainContents } from './plainContents.ts'
import '#features/sheet/view/band.css'
import './plain.css'

interface PlainSheetProps {
  ride: Ride
  report: RideReport
  paper: Paper
  date: string
}

/** The page for when the music fails. */
export function PlainSheet({ ride, report, paper, date }: PlainSheetProps) {
  const parts = useMemo(() => partsOf(plainContents(ride, report, date)), [ride, report, date])
  return <PagedSheet parts={parts} paper={paper} job={PLAIN} />
}

function partsOf({ title, facts, stamp, opening, lines, closing }: PlainContents): SheetParts {
  return {
    kind: 'plain',
    header: () => (
      <header className="sheet-header" data-part="header">
        <h2>
          <b>
            <bdi>{title}</bdi>
          </b>
        </h2>
        <p>
          <Facts facts={facts} />
        </p>
      </header>
    ),
    bands: [
      {
        id: 'lines',
        view: (from = 0, to = Number.POSITIVE_INFINITY) => (
          <section className="sheet-band" data-part="band">
            {from === 0 && opening && <AsideLine aside={opening} />}
            <ol>
              {lines.slice(from, to).map((line) => (
                <li key={line.id} className="sheet-row" data-part="row">
                  <EffortBar effort={line.effort} />
                  <span className="sheet-line">
                    <span className="sheet-data">
                      <span className="sheet-plain-time" data-column="time">
                        {line.from}–{line.to}
                        {line.clock && <span>{line.clock}</span>}
                      </span>
                      <b className="sheet-plain-level" data-column="level">
                        {line.level}
                      </b>
                    </span>
                    <span className="sheet-words">{line.words}</span>
                  </span>
                </li>
              ))}
            </ol>
            {/* Packed like one more line. */}
            {closing && from <= lines.length && to > lines.length && (
              <div data-part="row">
                <AsideLine aside={closing} />
              </div>
            )}
          </section>
        ),
      },
    ],
    footer: (
      <footer className="sheet-footer" data-part="footer">
        <p>
          {words.printed.plainFooter} {stamp}
        </p>
      </footer>
    ),
  }
}
