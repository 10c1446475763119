import { type ReactNode, useMemo } from 'react'
import { type CheckGroup, checklist } from '#engine/prepare/checklist.ts'
import { checkpoints } from '#engine/prepare/checkpoints.ts'
import type { RideReport } from '#engine/report.ts'
import { type OpeningCard, openingCard } from '#engine/words/openingCard.ts'
import { asidesOf } from '#features/sheet/contents/asidesOf.ts'
import { leadersOf } from '#features/sheet/contents/leadersOf.ts'
import { stampOf } from '#features/sheet/contents/stampOf.ts'
import { READING } from '#features/sheet/jobs.ts'
import type { Paper } from '#features/sheet/paging/paper.ts'
import { Facts } from '#features/sheet/view/Facts.tsx'
import { PagedSheet } from '#features/sheet/view/PagedSheet.tsx'
import type { SheetParts } from '#features/sheet/view/sheetParts.ts'
import type { Ride } from '#plan/model.ts'
import { nameOfSection } from '#plan/names.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { tell } from '#words/words.ts'
import '#features/sheet/view/band.css'
import './checklist.css'

interface ChecklistSheetProps {
  ride: Ride
  report: RideReport
  paper: Paper
  date: string
}

/** What to see to before class, with the times to look at the clock and the first words. */
export function ChecklistSheet({ ride, report, paper, date }: ChecklistSheetProps) {
  const parts = useMemo(() => partsOf(ride, report, date), [ride, report, date])
  return <PagedSheet parts={parts} paper={paper} job={READING} />
}

function partsOf(ride: Ride, report: RideReport, date: string): SheetParts {
  const title = ride.title || 'untitled ride'
  const times = timesOf(ride, report)
  return {
    kind: 'checklist',
    header: (page, pages) => (
      <header className="sheet-header" data-part="header">
        <h2>
          <b>Before class</b>
          <span>
            {' '}
            <bdi>{title}</bdi>
          </span>
        </h2>
        <p>
          <Facts facts={[leadersOf(ride), stampOf(ride, date), pages > 1 && `page ${page} of ${pages}`]} />
        </p>
      </header>
    ),
    bands: [
      ...checklist(ride, report).map((group) => ({
        id: tell(group.name),
        view: (from?: number, to?: number) => <Group group={group} from={from} to={to} />,
      })),
      { id: 'opening card', view: (from, to) => <Opening card={openingCard(ride, report)} from={from} to={to} /> },
      ...(times.length > 0 ? [{ id: 'clock', view: (from?: number, to?: number) => <Clock times={times} from={from} to={to} /> }] : []),
    ],
    footer: (
      <footer className="sheet-footer" data-part="footer">
        <p>The bike’s manual, the house’s rules and local codes come first.</p>
      </footer>
    ),
  }
}

/** Rows shown, from (inclusive) to (exclusive); all unless given. */
interface Shown {
  from?: number
  to?: number
}

function Group({ group, from = 0, to = group.items.length }: { group: CheckGroup } & Shown) {
  return (
    <section className="sheet-band" data-part="band">
      <h3 className="sheet-band-head">
        <b>{tell(group.name)}</b>
      </h3>
      <ul>
        {group.items.slice(from, to).map(({ id, text, detail }) => (
          <li key={id} className="sheet-check" data-part="row">
            <svg viewBox="0 0 10 10" className="sheet-check-box" aria-hidden="true">
              <rect x="0.5" y="0.5" width="9" height="9" fill="none" stroke="black" />
            </svg>
            <span>
              {tell(text)}
              {detail && <i>. {tell(detail)}</i>}
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}

function Opening({ card, from = 0, to = 1 }: { card: OpeningCard } & Shown) {
  return (
    <section className="sheet-band" data-part="band">
      <h3 className="sheet-band-head">
        <b>opening card</b>, {formatDuration(Math.ceil(card.seconds))} to say
      </h3>
      {from < to && (
        <p className="sheet-check" data-part="row">
          {card.sentences.join(' ')}
        </p>
      )}
    </section>
  )
}

/** A time to look at the clock, and what should begin then. */
interface Time {
  id: string
  time: string
  words: ReactNode
}

function timesOf(ride: Ride, report: RideReport): Time[] {
  const { opening } = asidesOf(report)
  const welcome = opening && { id: 'welcome', time: ride.startsAt ?? opening.rideClock, words: opening.words }
  const songs = checkpoints(ride, report).map(({ section, at, clock }) => ({
    id: `${section}`,
    time: clock ?? formatClock(at),
    words: (
      <>
        song {section + 1}, <bdi>{nameOfSection(ride, ride.sections[section]!)}</bdi>
        {clock && ` (${formatClock(at)})`}
      </>
    ),
  }))
  return [...(welcome ? [welcome] : []), ...songs]
}

function Clock({ times, from = 0, to }: { times: readonly Time[] } & Shown) {
  return (
    <section className="sheet-band" data-part="band">
      <h3 className="sheet-band-head">
        <b>look at the clock</b>
      </h3>
      <ul>
        {times.slice(from, to).map(({ id, time, words }) => (
          <li key={id} className="sheet-check" data-part="row">
            <b className="sheet-check-time" data-column="time">
              {time}
            </b>
            <span>{words}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}
