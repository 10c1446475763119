import { Fragment, useMemo } from 'react'
import type { RideReport } from '#engine/report.ts'
import { READING } from '#features/sheet/jobs.ts'
import type { Paper } from '#features/sheet/paging/paper.ts'
import { AsideLine } from '#features/sheet/view/AsideLine.tsx'
import { EffortBar } from '#features/sheet/view/EffortBar.tsx'
import { Facts } from '#features/sheet/view/Facts.tsx'
import { PostureMark } from '#features/sheet/view/marks.tsx'
import { PagedSheet } from '#features/sheet/view/PagedSheet.tsx'
import type { SheetParts } from '#features/sheet/view/sheetParts.ts'
import type { Ride } from '#plan/model.ts'
import { isolated } from '#units/isolated.ts'
import { words } from '#words/words.ts'
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
          <b>
            <bdi>{contents.title}</bdi>
          </b>
          <span> {words.printed.forSub({ aim: contents.aim && isolated(contents.aim) })}</span>
        </h2>
        <p>
          <Facts facts={[...contents.facts, contents.stamp, pages > 1 && words.sheet.page({ page, of: pages })]} />
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
        <p>{contents.footer}</p>
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
          {lines.map((line, index) => (
            <Fragment key={line}>
              {index > 0 && '; '}
              <bdi>{line}</bdi>
            </Fragment>
          ))}
          .
        </div>
      ))}
    </section>
  )
}

function BandOfStretches({ band, from = 0, to = Number.POSITIVE_INFINITY }: { band: SubstituteBand; from?: number; to?: number }) {
  const rows = band.groups.flatMap(({ times, stretches }, group) =>
    stretches.map((stretch, place) => ({
      stretch,
      turn: times > 1 && place === 0 ? words.printed.inTurn({ times }) : undefined,
      inTurn: times > 1,
      group,
    })),
  )
  return (
    <section className="sheet-band" data-part="band">
      {from === 0 && band.before && <AsideLine aside={band.before} />}
      <h3 className="sheet-band-head">
        <span className="sheet-band-title">
          <b>
            {band.number} {band.character}
          </b>
          {from > 0 && ` ${words.printed.continued}`}
        </span>
        <span className="sheet-band-facts">
          <Facts facts={band.facts} />
        </span>
      </h3>
      <ol>
        {rows.slice(from, to).map(({ stretch, turn, inTurn }) => (
          <li key={stretch.id} className="sheet-row" data-part="row" data-turn={inTurn}>
            <EffortBar effort={stretch.effort} />
            <span className="sheet-line">
              <span className="sheet-data">
                <b className="sheet-minutes" data-column="minutes">
                  {stretch.length}
                </b>
                <b className="sheet-level" data-column="level">
                  {stretch.level}
                </b>
                <PostureMark posture={stretch.posture} />
              </span>
              <span className="sheet-words">
                {turn && <b>{turn} </b>}
                <b>{stretch.road}</b>, {stretch.effortWords}; {stretch.feel}
                {stretch.total && ` (${stretch.total})`}
                {stretch.notes.length > 0 && `; ${stretch.notes.join(', ')}`}
                {stretch.options.length > 0 && <i>; {stretch.options.join(', ')}</i>}.
              </span>
            </span>
          </li>
        ))}
      </ol>
      {/* Packed like one more stretch. */}
      {band.after && from <= rows.length && to > rows.length && (
        <div data-part="row">
          <AsideLine aside={band.after} />
        </div>
      )}
    </section>
  )
}
