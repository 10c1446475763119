import { useMemo } from 'react'
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
import { sectionName } from '#plan/names.ts'
import { isolated } from '#units/isolated.ts'
import { clock, wallClock } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
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
  const title = ride.title || words.names.untitled
  const times = timesOf(ride, report)
  return {
    kind: 'checklist',
    header: (page, pages) => (
      <header className="sheet-header" data-part="header">
        <h2>
          <b>{words.printed.beforeClass}</b>
          <span>
            {' '}
            <bdi>{title}</bdi>
          </span>
        </h2>
        <p>
          <Facts facts={[leadersOf(ride), stampOf(ride, date), pages > 1 && words.sheet.page({ page, of: pages })]} />
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
        <p>{words.printed.rulesFirst}</p>
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
        <b>{words.printed.openingCard({ seconds: Math.ceil(card.seconds) })}</b>
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
  says: string
}

function timesOf(ride: Ride, report: RideReport): Time[] {
  const { opening } = asidesOf(report)
  const welcome = opening && { id: 'welcome', time: ride.startsAt ? wallClock(ride.startsAt) : opening.rideClock, says: opening.words }
  const songs = checkpoints(ride, report).map(({ section, at, clock: due }) => ({
    id: `${section}`,
    time: due ? wallClock(due) : clock(at),
    says: words.printed.songCheck({
      place: section + 1,
      song: isolated(tell(sectionName(ride, ride.sections[section]!))),
      at: due ? at : undefined,
    }),
  }))
  return [...(welcome ? [welcome] : []), ...songs]
}

function Clock({ times, from = 0, to }: { times: readonly Time[] } & Shown) {
  return (
    <section className="sheet-band" data-part="band">
      <h3 className="sheet-band-head">
        <b>{words.printed.timeChecks}</b>
      </h3>
      <ul>
        {times.slice(from, to).map(({ id, time, says }) => (
          <li key={id} className="sheet-check" data-part="row">
            <b className="sheet-check-time" data-column="time">
              {time}
            </b>
            <span>{says}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}
