import { paceRange } from '#engine/cadence/paceRange.ts'
import { computeRide } from '#engine/computeRide.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import { inSpokenOrder, linesByBlock } from '#engine/cues/spokenOrder.ts'
import type { LedgerEntry, PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { type CsvCell, writeCsv } from '#formats/csv/writeCsv.ts'
import type { Bike, Ride, Section } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { tell, words } from '#words/words.ts'

/** What a row is read from: a block as it is played, in its ride. */
interface Row {
  ride: Ride
  report: RideReport
  section: Section
  played: PlayedBlock
  /** The lines spoken in it. */
  lines: readonly CueLine[]
}

/** The columns in their order: what each is headed, and what stands in it. */
const COLUMNS: Readonly<Record<string, (row: Row) => CsvCell>> = {
  section: ({ played }) => played.section + 1,
  title: ({ section }) => section.title,
  song: ({ section }) => section.song?.title,
  artist: ({ section }) => section.song?.artist,
  bpm: ({ report, played }) => rounded(report.sections[played.section]!.bpm),
  ride_s: ({ played }) => rounded(played.from),
  song_s: ({ section, played }) => (section.song ? rounded(played.sectionFrom) : undefined),
  length_s: ({ played }) => rounded(played.to - played.from),
  counts: ({ played: { countFrom, countTo } }) => (countFrom === undefined || countTo === undefined ? undefined : countTo - countFrom),
  block: ({ played }) => tell(itemName(played.block)),
  round: ({ played: { set } }) => (set && set.set.rounds > 1 ? words.exports.roundOf({ round: set.round, of: set.set.rounds }) : undefined),
  terrain: ({ played }) => played.block.terrain,
  posture: ({ played }) => played.block.posture,
  hands: ({ played }) => played.block.hands,
  effort_from: ({ played }) => played.block.effort.from,
  effort_to: ({ played }) => played.block.effort.to,
  rpm_from: ({ played }) => paceAt(played, 0),
  rpm_to: ({ played }) => paceAt(played, 1),
  call: ({ played }) => tell(played.ledger.change),
  total: ({ ride, played }) => setting(ride, played.ledger.after.nominal),
  total_low: ({ ride, played }) => setting(ride, played.ledger.after.low),
  total_high: ({ ride, played }) => setting(ride, played.ledger.after.high),
  unit: ({ ride }) => ride.bike.unit,
  lead_foot: ({ played }) => played.foot ?? undefined,
  move: ({ played: { block } }) => block.move && words.printed.move(block.move),
  words: ({ played: { block }, lines }) =>
    inSpokenOrder(block.cues, lines)
      .map(({ text }) => text.trim())
      .filter(Boolean)
      .join(' '),
  feel: ({ played }) => played.block.feel,
  easier: ({ played }) => played.block.easier?.text,
  harder: ({ played }) => played.block.harder?.text,
  water: ({ played }) => (played.block.water ? 'water' : undefined),
  leader: ({ ride, played: { block } }) => nameOf(ride, block.leader),
  microphone: ({ ride, played: { block } }) => nameOf(ride, block.mic ?? block.leader),
}

/** Where the ride is read on another bike: what its totals are there, beside its own. */
const OTHER_COLUMNS: Readonly<Record<string, (bike: Bike, entry: LedgerEntry) => CsvCell>> = {
  other_bike: ({ name }) => name,
  other_total: (_, { total }) => tell(total),
  other_unit: ({ unit }) => unit,
  other_feel: (_, { reading }) => reading && tell(reading.feel),
}

/**
 * One row a change, numbers as numbers, so that spreadsheets can count with it. Calls and totals are
 * in the ride's own unit, also where it is read on another bike: what it reads there has columns of its own.
 */
export function csvOf(ride: Ride, report: RideReport): string {
  const { shownOn, blocks } = report
  const own = shownOn ? computeRide(ride) : report
  const spoken = linesByBlock(own)
  const rows = own.blocks
    .filter(({ from, to }) => to > from)
    .map((played) => {
      const row = { ride, report: own, section: ride.sections[played.section]!, played, lines: spoken[played.index]! }
      const cells = Object.values(COLUMNS).map((cell) => cell(row))
      if (!shownOn) return cells
      return [...cells, ...Object.values(OTHER_COLUMNS).map((cell) => cell(shownOn.bike, blocks[played.index]!.ledger))]
    })
  return writeCsv([[...Object.keys(COLUMNS), ...(shownOn ? Object.keys(OTHER_COLUMNS) : [])], ...rows])
}

/** An end that is open is no number: its cell stays empty. */
const setting = ({ bike }: Ride, steps: number | null): CsvCell => (steps === null ? undefined : steps / bike.stepsPerUnit)

function paceAt({ cadence }: PlayedBlock, end: 0 | 1): CsvCell {
  if (cadence.kind === 'still') return 0
  return cadence.kind === 'turning' ? rounded(paceRange(cadence)[end]) : undefined
}

/** A leader's name; the first one's unless an id is given. */
const nameOf = ({ leaders }: Ride, id = leaders[0]?.id): CsvCell => leaders.find((leader) => leader.id === id)?.name

/** To thousandths: finer is arithmetic, not music. */
const rounded = <Value extends number | undefined>(value: Value) => (value === undefined ? value : Math.round(value * 1000) / 1000)
