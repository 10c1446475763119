import type { RideReport } from '#engine/report.ts'
import type { Aside, Band, Row } from '#features/sheet/contents/contents.ts'
import { stopped } from '#features/sheet/contents/sentence.ts'
import { sheetContents } from '#features/sheet/contents/sheetContents.ts'
import type { Listing } from '#formats/listing/listing.ts'
import type { Ride } from '#plan/model.ts'
import { isolated } from '#units/isolated.ts'
import { words } from '#words/words.ts'

/** The compact sheet as lines: the same words and numbers, without marks. */
export function listingOf(ride: Ride, report: RideReport, date: string): Listing {
  const { title, aim, facts, leaders, stamp, bands, heads, safety } = sheetContents(ride, report, { date, songClock: 'left' })
  const { printed } = words
  return {
    title: isolated(title),
    facts: [...(aim ? [isolated(aim)] : []), ...facts, ...(leaders ? [leaders] : []), stamp],
    head: [heads.ride, heads.song, heads.length, printed.effortHead, heads.total, printed.callHead, printed.whatHead],
    numbers: new Set([0, 1, 2, 3, 4]),
    sections: bands.map((band) => ({ title: titleOf(band), facts: factsOf(band), rows: rowsOf(band) })),
    notes: [safety],
  }
}

function titleOf({ number, title, song, artist }: Band): string {
  const names = [title, song, artist].filter((name) => name !== undefined).map(isolated)
  return names.length === 0 ? words.names.songPlace({ place: number }) : `${number} ${names.join(', ')}`
}

const factsOf = ({ facts, lead, handOver }: Band): string[] => [
  ...(handOver ? [handOver] : []),
  ...facts,
  ...(lead ? [words.printed.footOnOne({ foot: lead })] : []),
]

const rowsOf = ({ before, rows, after }: Band): string[][] => [
  ...(before ? [asideOf(before)] : []),
  ...rows.map(rowOf),
  ...(after ? [asideOf(after)] : []),
]

const asideOf = ({ rideClock, words }: Aside): string[] => [rideClock, '', '', '', '', '', words]

function rowOf(row: Row): string[] {
  const { printed, names } = words
  const how = [
    names.posture(row),
    row.hands === 'centre' ? '' : printed.hands(row),
    ...row.notes.map(isolated),
    row.water ? printed.water : '',
  ]
  const what = [
    row.handOver && `${row.handOver};`,
    row.foot && `${printed.foot({ foot: row.foot })};`,
    `${isolated(row.name)} (${how.filter(Boolean).join(', ')}).`,
    isolated(row.words),
    row.feel && printed.feelIs({ feel: isolated(stopped(row.feel)) }),
    row.easier && printed.easierIs({ text: isolated(stopped(row.easier)) }),
  ]
  return [row.rideClock, row.songClock, row.length, row.level, row.total, row.call, what.filter(Boolean).join(' ')]
}
