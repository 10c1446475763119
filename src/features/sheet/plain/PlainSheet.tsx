import { useMemo } from 'react'
import type { RideReport } from '#engine/report.ts'
import { PLAIN } from '#features/sheet/jobs.ts'
import type { Paper } from '#features/sheet/paging/paper.ts'
import { EffortBar } from '#features/sheet/view/EffortBar.tsx'
import { PagedSheet, type SheetParts } from '#features/sheet/view/PagedSheet.tsx'
import type { Ride } from '#plan/model.ts'
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

function partsOf({ title, facts, stamp, lines }: PlainContents): SheetParts {
  return {
    kind: 'plain',
    header: () => (
      <header className="sheet-header" data-part="header">
        <h2>
          <b>{title}</b>
        </h2>
        <p>{facts.join(' · ')}</p>
      </header>
    ),
    bands: [
      {
        id: 'lines',
        view: (from = 0, to = lines.length) => (
          <section className="sheet-band" data-part="band">
            <ol>
              {lines.slice(from, to).map((line) => (
                <li key={line.id} className="sheet-row" data-part="row">
                  <EffortBar effort={line.effort} />
                  <span className="sheet-plain-time">
                    {line.from}–{line.to}
                    {line.clock && <span> {line.clock}</span>}
                  </span>
                  <b className="sheet-plain-level">{line.level}</b>
                  <span className="sheet-words">{line.words}</span>
                </li>
              ))}
            </ol>
          </section>
        ),
      },
    ],
    footer: (
      <footer className="sheet-footer" data-part="footer">
        <p>Efforts 0–10. Say length, number and effort first; count people in and out. {stamp}</p>
      </footer>
    ),
  }
}
