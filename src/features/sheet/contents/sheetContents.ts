import type { RideReport } from '#engine/report.ts'
import { contentRevision } from '#plan/contentRevision.ts'
import type { Ride } from '#plan/model.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { bandOf } from './bandOf.ts'
import { columnWidths } from './columnWidths.ts'
import type { Row, SheetContents, SongClock } from './contents.ts'
import { legendOf } from './legendOf.ts'
import { SAFETY_LINE } from './safety.ts'

export interface SheetOptions {
  /** The day of printing, ready to read. */
  date: string
  songClock: SongClock
}

/** What the compact sheet of a ride says. Pure; the report must be the ride's own. */
export function sheetContents(ride: Ride, report: RideReport, { date, songClock }: SheetOptions): SheetContents {
  const bands = report.sections.map((section, index) => bandOf(ride, report, section, index, songClock))
  const rows = bands.flatMap((band) => band.rows)
  const heads = { song: songClock === 'left' ? 'left' : 'song', length: rows.some(isCounted) ? '8s' : 'for' }
  return {
    title: ride.title || 'untitled ride',
    aim: ride.aim || undefined,
    facts: headerFacts(ride, report),
    stamp: `${date}, version ${versionOf(ride)}`,
    heads,
    widths: columnWidths(rows, heads),
    bands,
    legend: legendOf(ride, bands, heads),
    safety: SAFETY_LINE,
  }
}

/** True where a row's length is in eights, not on the clock. */
const isCounted = (row: Row): boolean => !row.length.includes(':')

/** Digits that are printed: enough to tell two versions of one ride apart at a glance. */
const STAMP_DIGITS = 4

/** Names what is taught, so that a copy kept by another leader carries the same stamp as the ride it came from. */
const versionOf = (ride: Ride): string => contentRevision(ride).slice(0, STAMP_DIGITS)

function headerFacts(ride: Ride, { totals }: RideReport): string[] {
  const slot = `${formatNumber(ride.slotMinutes)} min`
  const slack = totals.slack >= 0 ? `${formatClock(totals.slack)} to spare` : `${formatClock(-totals.slack)} over the slot`
  return [ride.level, ride.startsAt ? `${slot} from ${ride.startsAt}` : slot, `${formatClock(totals.total)} long, ${slack}`, ride.bike.name]
}
