import { paceRange } from '#engine/cadence/paceRange.ts'
import { computeRide } from '#engine/computeRide.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import { inSpokenOrder, linesByBlock } from '#engine/cues/spokenOrder.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { type CsvCell, writeCsv } from '#formats/csv/writeCsv.ts'
import type { Bike, Ride } from '#plan/model.ts'
import { nameOfItem } from '#plan/names.ts'

const HEAD = [
  ...[
    'section',
    'title',
    'song',
    'artist',
    'bpm',
    'ride_s',
    'song_s',
    'length_s',
    'counts',
    'block',
    'round',
    'terrain',
    'posture',
    'hands',
  ],
  ...['effort_from', 'effort_to', 'rpm_from', 'rpm_to', 'call', 'total', 'total_low', 'total_high', 'unit', 'lead_foot', 'move'],
  ...['words', 'feel', 'easier', 'harder', 'water', 'leader', 'microphone'],
]

/** Where the ride is read on another bike: what its totals are there, beside its own. */
const OTHER_HEAD = ['other_bike', 'other_total', 'other_unit', 'other_feel']

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
    .map((played) => [
      ...rowOf(ride, own, spoken[played.index]!, played),
      ...(shownOn ? otherBike(shownOn.bike, blocks[played.index]!) : []),
    ])
  return writeCsv([[...HEAD, ...(shownOn ? OTHER_HEAD : [])], ...rows])
}

const otherBike = ({ name, unit }: Bike, { ledger: { total, reading } }: PlayedBlock): CsvCell[] => [name, total, unit, reading?.feel]

function rowOf(ride: Ride, report: RideReport, lines: readonly CueLine[], played: PlayedBlock): CsvCell[] {
  const { block, ledger, cadence, set } = played
  const section = ride.sections[played.section]!
  const { song } = section
  // An end that is open is no number: its cell stays empty.
  const setting = (steps: number | null) => (steps === null ? undefined : steps / ride.bike.stepsPerUnit)
  const turning = cadence.kind === 'turning' ? paceRange(cadence).map(rounded) : cadence.kind === 'still' ? [0, 0] : [undefined, undefined]
  const name = (id: string | undefined) => ride.leaders.find((leader) => leader.id === id)?.name
  const counts = played.countFrom === undefined || played.countTo === undefined ? undefined : played.countTo - played.countFrom
  const bpm = report.sections[played.section]!.bpm
  return [
    ...[played.section + 1, section.title, song?.title, song?.artist, bpm === undefined ? undefined : rounded(bpm)],
    ...[rounded(played.from), song ? rounded(played.sectionFrom) : undefined, rounded(played.to - played.from), counts],
    ...[
      nameOfItem(block),
      set && set.set.rounds > 1 ? `${set.round} of ${set.set.rounds}` : undefined,
      block.terrain,
      block.posture,
      block.hands,
    ],
    ...[block.effort.from, block.effort.to, ...turning, ledger.change],
    ...[setting(ledger.after.nominal), setting(ledger.after.low), setting(ledger.after.high), ride.bike.unit],
    ...[played.foot ?? undefined, block.move && `${block.move.name} on ${block.move.counts}`],
    ...[
      inSpokenOrder(block.cues, lines)
        .map(({ text }) => text.trim())
        .filter(Boolean)
        .join(' '),
      block.feel,
      block.easier?.text,
      block.harder?.text,
    ],
    ...[
      block.water ? 'water' : undefined,
      name(block.leader ?? ride.leaders[0]?.id),
      name(block.mic ?? block.leader ?? ride.leaders[0]?.id),
    ],
  ]
}

/** To thousandths: finer is arithmetic, not music. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000
