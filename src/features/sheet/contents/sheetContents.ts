import { linesByBlock } from '#engine/cues/spokenOrder.ts'
import type { RideReport } from '#engine/report.ts'
import type { Bike, Ride } from '#plan/model.ts'
import { bikeName } from '#plan/names.ts'
import { rolesOf } from '#plan/rolesOf.ts'
import { isolated } from '#units/isolated.ts'
import { tell, words } from '#words/words.ts'
import { bandOf } from './bandOf.ts'
import type { Band, Row, SheetContents, SongClock } from './contents.ts'
import type { LeadHands } from './handOver.ts'
import { leadersOf } from './leadersOf.ts'
import { legendOf } from './legendOf.ts'
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
  const counted = rows.some(isCounted)
  const { printed } = words
  const heads = {
    ride: printed.rideHead,
    song: songClock === 'left' ? printed.leftHead : printed.elapsedHead,
    length: counted ? printed.eightsHead : printed.timeHead,
    total: printed.totalHead({ turns: (report.shownOn?.bike ?? ride.bike).unit === 'turn' }),
  }
  return {
    title: ride.title || words.names.untitled,
    aim: ride.aim || undefined,
    facts: [...headerFacts(ride, report), ...(reader ? [printed.forReader({ name: isolated(nameOf(ride, reader)) })] : [])],
    leaders: leadersOf(ride),
    stamp: stampOf(ride, date),
    heads,
    bands,
    legend: [
      ...legendOf({ ride, bands, heads, songClock, counted }),
      ...used().map(({ short, long }) => ({ mark: { kind: 'word' as const, word: short }, text: long })),
    ],
    safety: printed.safety,
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
  const { printed, names } = words
  return [
    names.level(ride),
    printed.classFrom({ minutes: ride.slotMinutes, startsAt: ride.startsAt }),
    printed.long({ seconds: overall.total, left: overall.slack }),
    shownOn ? printed.onBike({ shown: bikeWords(shownOn.bike), own: bikeWords(ride.bike) }) : bikeWords(ride.bike),
  ]
}

const bikeWords = (bike: Bike): string => isolated(tell(bikeName(bike)))
