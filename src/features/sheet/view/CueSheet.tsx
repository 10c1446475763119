import { type ReactNode, useMemo } from 'react'
import type { RideReport } from '#engine/report.ts'
import type { SheetContents, SongClock } from '#features/sheet/contents/contents.ts'
import { sheetContents } from '#features/sheet/contents/sheetContents.ts'
import type { Short } from '#features/sheet/contents/shorthand.ts'
import type { SheetJob } from '#features/sheet/jobs.ts'
import type { Paper } from '#features/sheet/paging/paper.ts'
import type { Ride } from '#plan/model.ts'
import { BandView } from './BandView.tsx'
import { PagedSheet } from './PagedSheet.tsx'
import { CardFooter, CardHeader, ColumnHead, LargeHeader, LegendBand, PageFooter, PageHeader } from './PageParts.tsx'
import type { SheetBand, SheetParts } from './sheetParts.ts'
import type { LaidSheet } from './useSheetPlan.ts'
import './band.css'
import './kinds.css'

type CueSheetKind = 'compact' | 'large' | 'cards' | 'phone'

interface CueSheetProps {
  ride: Ride
  /** The ride's own report. */
  report: RideReport
  kind: CueSheetKind
  job: SheetJob
  paper: Paper
  songClock: SongClock
  /** Id of the leader it is made for; absent for both. */
  reader?: string
  shorthand: readonly Short[]
  /** The day of printing, ready to read. */
  date: string
  fourUp?: boolean
  children?: (plan: LaidSheet, parts: SheetParts) => ReactNode
}

/** Every sheet that goes change by change: the same rows, on pages, cards or screens. */
export function CueSheet({ ride, report, kind, job, paper, songClock, reader, shorthand, date, fourUp, children }: CueSheetProps) {
  const parts = useMemo(
    () => partsOf(kind, sheetContents(ride, report, { date, songClock, reader, shorthand })),
    [kind, ride, report, date, songClock, reader, shorthand],
  )
  return (
    <PagedSheet parts={parts} paper={paper} job={job} fourUp={fourUp}>
      {children && ((plan) => children(plan, parts))}
    </PagedSheet>
  )
}

function partsOf(kind: CueSheetKind, contents: SheetContents): SheetParts {
  const bands = contents.bands.map(
    (band): SheetBand => ({ id: band.id, view: (from, to, named) => <BandView band={band} from={from} to={to} named={named} /> }),
  )
  const common = { kind, bands }
  const columnHead = <ColumnHead heads={contents.heads} />
  if (kind === 'compact') {
    const header = (page: number, pages: number) => <PageHeader contents={contents} page={page} pages={pages} />
    return { ...common, header, columnHead, footer: <PageFooter contents={contents} /> }
  }
  if (kind === 'large') {
    const header = (page: number, pages: number) => <LargeHeader contents={contents} page={page} pages={pages} />
    const legend: SheetBand = { id: ' legend', view: (from, to) => <LegendBand contents={contents} from={from} to={to} /> }
    return { ...common, bands: [...bands, legend], header, columnHead }
  }
  const header = (page: number, pages: number) => <CardHeader contents={contents} page={page} pages={pages} />
  return { ...common, header, footer: <CardFooter contents={contents} /> }
}
