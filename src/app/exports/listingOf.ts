import type { RideReport } from '#engine/report.ts'
import type { Band, Row } from '#features/sheet/contents/contents.ts'
import { stopped } from '#features/sheet/contents/sentence.ts'
import { sheetContents } from '#features/sheet/contents/sheetContents.ts'
import type { Listing } from '#formats/listing/listing.ts'
import type { Ride } from '#plan/model.ts'

const POSTURES = { seated: 'seated', standing: 'standing', hovering: 'hovering', offBike: 'off the bike' } as const

/** The compact sheet as lines: the same words and numbers, without marks. */
export function listingOf(ride: Ride, report: RideReport, date: string): Listing {
  const { title, aim, facts, stamp, bands, heads, safety } = sheetContents(ride, report, { date, songClock: 'left' })
  return {
    title,
    facts: [...(aim ? [aim] : []), ...facts, stamp],
    head: ['ride', heads.song, heads.length, 'effort', 'total', 'call', 'what'],
    numbers: new Set([0, 1, 2, 3, 4]),
    sections: bands.map((band) => ({ title: titleOf(band), facts: factsOf(band), rows: band.rows.map(rowOf) })),
    notes: [safety],
  }
}

function titleOf({ number, title, song, artist }: Band): string {
  const names = [title, song, artist].filter((name) => name !== undefined)
  return names.length === 0 ? `section ${number}` : `${number} ${names.join(', ')}`
}

const factsOf = ({ facts, lead, handOver }: Band): string[] => [
  ...(handOver ? [handOver] : []),
  ...facts,
  ...(lead ? [`${lead} foot on the one`] : []),
]

function rowOf(row: Row): string[] {
  const what = [
    row.handOver && `${row.handOver};`,
    row.foot && `${row.foot} foot;`,
    `${row.name} (${[POSTURES[row.posture], row.hands === 'centre' ? '' : `hands ${row.hands}`, ...row.notes, row.water ? 'water' : ''].filter(Boolean).join(', ')}).`,
    row.words,
    row.feel && `Feel: ${stopped(row.feel)}`,
    row.easier && `Easier: ${stopped(row.easier)}`,
  ]
  return [row.rideClock, row.songClock, row.length, row.level, row.total, row.call, what.filter(Boolean).join(' ')]
}
