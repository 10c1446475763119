import type { RideReport } from '#engine/report.ts'
import type { Aside, Band, Row } from '#features/sheet/contents/contents.ts'
import { stopped } from '#features/sheet/contents/sentence.ts'
import { sheetContents } from '#features/sheet/contents/sheetContents.ts'
import type { Listing } from '#formats/listing/listing.ts'
import type { Ride } from '#plan/model.ts'
import { POSTURE_WORDS } from '#plan/posture.ts'
import { isolated } from '#units/isolated.ts'

/** The compact sheet as lines: the same words and numbers, without marks. */
export function listingOf(ride: Ride, report: RideReport, date: string): Listing {
  const { title, aim, facts, leaders, stamp, bands, heads, safety } = sheetContents(ride, report, { date, songClock: 'left' })
  return {
    title: isolated(title),
    facts: [...(aim ? [isolated(aim)] : []), ...facts, ...(leaders ? [leaders] : []), stamp],
    head: ['ride', heads.song, heads.length, 'effort', 'total', 'call', 'what'],
    numbers: new Set([0, 1, 2, 3, 4]),
    sections: bands.map((band) => ({ title: titleOf(band), facts: factsOf(band), rows: rowsOf(band) })),
    notes: [safety],
  }
}

function titleOf({ number, title, song, artist }: Band): string {
  const names = [title, song, artist].filter((name) => name !== undefined).map(isolated)
  return names.length === 0 ? `section ${number}` : `${number} ${names.join(', ')}`
}

const factsOf = ({ facts, lead, handOver }: Band): string[] => [
  ...(handOver ? [handOver] : []),
  ...facts,
  ...(lead ? [`${lead} foot on the one`] : []),
]

const rowsOf = ({ before, rows, after }: Band): string[][] => [
  ...(before ? [asideOf(before)] : []),
  ...rows.map(rowOf),
  ...(after ? [asideOf(after)] : []),
]

const asideOf = ({ rideClock, words }: Aside): string[] => [rideClock, '', '', '', '', '', words]

function rowOf(row: Row): string[] {
  const what = [
    row.handOver && `${row.handOver};`,
    row.foot && `${row.foot} foot;`,
    `${isolated(row.name)} (${[POSTURE_WORDS[row.posture].is, row.hands === 'centre' ? '' : `hands ${row.hands}`, ...row.notes.map(isolated), row.water ? 'water' : ''].filter(Boolean).join(', ')}).`,
    isolated(row.words),
    row.feel && `Feel: ${isolated(stopped(row.feel))}`,
    row.easier && `Easier: ${isolated(stopped(row.easier))}`,
  ]
  return [row.rideClock, row.songClock, row.length, row.level, row.total, row.call, what.filter(Boolean).join(' ')]
}
