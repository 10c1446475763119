import { linesByBlock } from '#engine/cues/spokenOrder.ts'
import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { rolesOf } from '#plan/rolesOf.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { isolated } from '#units/isolated.ts'
import { bandOf } from './bandOf.ts'
import type { Band, Row, SheetContents, SongClock } from './contents.ts'
import type { LeadHands } from './handOver.ts'
import { leadersOf } from './leadersOf.ts'
import { legendOf } from './legendOf.ts'
import { SAFETY_LINE } from './safety.ts'
import { type Short, shortenerOf } from './shorthand.ts'
import { stampOf } from './stampOf.ts'

interface SheetOptions {
  /** The day of printing, ready to read. */
  date: string
  songClock: SongClock
  /** Id of the leader it is made for; absent for both. */
  reader?: string
  /** The leader's own short forms. */
  shorthand?: readonly Short[]
}

/** What a sheet of a ride says, row by row. Pure; the report must be the ride's own. */
export function sheetContents(ride: Ride, report: RideReport, { date, songClock, reader, shorthand = [] }: SheetOptions): SheetContents {
  const { shorten, used } = shortenerOf(shorthand)
  const hands = handsIn(ride, report, reader)
  const spoken = linesByBlock(report)
  const whole = report.sections.map((section, index) => bandOf({ ride, report, spoken, section, index, songClock, reader, hands }))
  const bands = whole.map((band) => shortened(band, shorten))
  const rows = bands.flatMap((band) => band.rows)
  const heads = { song: songClock === 'left' ? 'left' : 'song', length: rows.some(isCounted) ? '8s' : 'for' }
  return {
    title: ride.title || 'untitled ride',
    aim: ride.aim || undefined,
    facts: [...headerFacts(ride, report), ...(reader ? [`for ${isolated(nameOf(ride, reader))}`] : [])],
    leaders: leadersOf(ride),
    stamp: stampOf(ride, date),
    heads,
    bands,
    legend: [
      ...legendOf(ride, bands, heads),
      ...used().map(({ short, long }) => ({ mark: { kind: 'word' as const, word: short }, text: long })),
    ],
    safety: SAFETY_LINE,
  }
}

/** True where a row's length is in eights, not on the clock. */
const isCounted = (row: Row): boolean => !row.length.includes(':')

/** Nothing to say of a class that one leads; on a sheet for one of two it is said once. */
function handsIn(ride: Ride, { blocks }: RideReport, reader: string | undefined): LeadHands {
  if (ride.leaders.length < 2) return 'unsaid'
  const first = ride.leaders[0]!.id
  const change = blocks.some(({ block }) => Object.values(rolesOf(ride, block)).some((id) => id !== first))
  return change ? 'change' : reader === undefined ? 'unsaid' : 'one'
}

const nameOf = ({ leaders }: Ride, id: string): string => leaders.find((leader) => leader.id === id)?.name ?? ''

/** The band with the leader's short forms in everything that is words. */
const shortened = (band: Band, shorten: (text: string) => string): Band => ({
  ...band,
  rows: band.rows.map((row) => ({
    ...row,
    name: shorten(row.name),
    notes: row.notes.map(shorten),
    words: shorten(row.words),
    shortWords: shorten(row.shortWords),
    feel: row.feel && shorten(row.feel),
    easier: row.easier && shorten(row.easier),
  })),
})

/** What the whole class is, for the head of any page. */
export function headerFacts(ride: Ride, { overall, shownOn }: RideReport): string[] {
  const slot = `${formatNumber(ride.slotMinutes)} min`
  const slack = overall.slack >= 0 ? `${formatClock(overall.slack)} to spare` : `${formatClock(-overall.slack)} over the slot`
  return [
    ride.level,
    ride.startsAt ? `${slot} from ${ride.startsAt}` : slot,
    `${formatClock(overall.total)} long, ${slack}`,
    shownOn ? `totals about, on ${isolated(shownOn.bike.name)}; words made for ${isolated(ride.bike.name)}` : isolated(ride.bike.name),
  ]
}
