import { useMemo } from 'react'
import type { RideReport } from '#engine/report.ts'
import { READING } from '#features/sheet/jobs.ts'
import type { Paper } from '#features/sheet/paging/paper.ts'
import { EffortBar } from '#features/sheet/view/EffortBar.tsx'
import { PostureMark } from '#features/sheet/view/marks.tsx'
import { PagedSheet, type SheetParts } from '#features/sheet/view/PagedSheet.tsx'
import type { Ride } from '#plan/model.ts'
import { type SubstituteBand, type SubstituteContents, substituteContents } from './substituteContents.ts'
import '#features/sheet/view/band.css'
import './substitute.css'

interface SubstituteSheetProps {
  ride: Ride
  report: RideReport
  paper: Paper
  date: string
}

/** The class for someone who brings other music. */
export function SubstituteSheet({ ride, report, paper, date }: SubstituteSheetProps) {
  const parts = useMemo(() => partsOf(substituteContents(ride, report, date)), [ride, report, date])
  return <PagedSheet parts={parts} paper={paper} job={READING} />
}

function partsOf(contents: SubstituteContents): SheetParts {
  return {
    kind: 'substitute',
    header: (page, pages) => (
      <header className="sheet-header" data-part="header">
        <h2>
          <b>{contents.title}</b>
          <span> for a substitute{contents.aim && `: ${contents.aim}`}</span>
        </h2>
        <p>
          {contents.facts.join(' · ')} · {contents.stamp}
          {pages > 1 && ` · page ${page} of ${pages}`}
        </p>
      </header>
    ),
    bands: [
      { id: 'brief', view: (from, to) => <Brief contents={contents} from={from} to={to} /> },
      ...contents.bands.map((band) => ({
        id: band.id,
        view: (from?: number, to?: number) => <BandOfStretches band={band} from={from} to={to} />,
      })),
    ],
    footer: (
      <footer className="sheet-footer" data-part="footer">
        <p>
          Effort 0–10 by how one sits and talks; in brackets {contents.scale}. Play whatever you like at about the speed of the legs. Offer
          the saddle whenever you ask them to stand. {contents.safety}
        </p>
      </footer>
    ),
  }
}

function Brief({ contents, from = 0, to = contents.brief.length }: { contents: SubstituteContents; from?: number; to?: number }) {
  return (
    <section className="sheet-band" data-part="band">
      {contents.brief.slice(from, to).map(({ name, lines }) => (
        <div key={name} className="sheet-brief" data-part="row">
          <b>{name}: </b>
          {lines.join('; ')}.
        </div>
      ))}
    </section>
  )
}

function BandOfStretches({ band, from = 0, to = Number.POSITIVE_INFINITY }: { band: SubstituteBand; from?: number; to?: number }) {
  const rows = band.groups.flatMap(({ times, stretches }, group) =>
    stretches.map((stretch, place) => ({
      stretch,
      turn: times > 1 && place === 0 ? `${times} times:` : undefined,
      inTurn: times > 1,
      group,
    })),
  )
  return (
    <section className="sheet-band" data-part="band">
      <h3 className="sheet-band-head">
        <span className="sheet-band-title">
          <b>
            {band.number} {band.character}
          </b>
          {from > 0 && ' (continued)'}
        </span>
        <span className="sheet-band-facts">{band.facts.join(' · ')}</span>
      </h3>
      <ol>
        {rows.slice(from, to).map(({ stretch, turn, inTurn }) => (
          <li key={stretch.id} className="sheet-row" data-part="row" data-turn={inTurn}>
            <EffortBar effort={stretch.effort} />
            <span className="sheet-line">
              <span className="sheet-data">
                <b className="sheet-minutes">{stretch.length}</b>
                <b className="sheet-level">{stretch.level}</b>
                <PostureMark posture={stretch.posture} />
              </span>
              <span className="sheet-words">
                {turn && <b>{turn} </b>}
                <b>{stretch.road}</b>, {stretch.effortWords}; {stretch.feel}
                {stretch.notes.length > 0 && `; ${stretch.notes.join(', ')}`}
                {stretch.options.length > 0 && <i>; {stretch.options.join(', ')}</i>}.
              </span>
            </span>
          </li>
        ))}
      </ol>
    </section>
  )
}
