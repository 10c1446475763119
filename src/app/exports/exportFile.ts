import { strToU8, zipSync } from 'fflate'
import type { RideReport } from '#engine/report.ts'
import type { ExportDay, ExportedFile, ExportId } from '#features/sheet/exportKinds.ts'
import { writeMarkdown } from '#formats/listing/writeMarkdown.ts'
import { writeText } from '#formats/listing/writeText.ts'
import { writeM3u8 } from '#formats/playlist/writeM3u8.ts'
import { writeXspf } from '#formats/playlist/writeXspf.ts'
import { writeWebVtt } from '#formats/webvtt/writeWebVtt.ts'
import { fileStem } from '#plan/document/fileStem.ts'
import type { Ride } from '#plan/model.ts'
import { sectionName } from '#plan/names.ts'
import { formatClock } from '#units/formatClock.ts'
import { isolated } from '#units/isolated.ts'
import { tell } from '#words/words.ts'
import { calendarOf } from './calendarOf.ts'
import { chaptersOf, rideCaptions, songCaptions } from './captionsOf.ts'
import { csvOf } from './csvOf.ts'
import { listingOf } from './listingOf.ts'
import { tracksOf } from './tracksOf.ts'

interface ExportMoment extends ExportDay {
  /** Milliseconds since 1970. */
  now: number
  /** The same day, ready to read. */
  today: string
}

type Maker = (ride: Ride, report: RideReport, moment: ExportMoment) => ExportedFile

const PLAIN = 'text/plain;charset=utf-8'
const VTT = 'text/vtt;charset=utf-8'

const MAKERS: Record<ExportId, Maker> = {
  text: (ride, report, { today }) => ({ data: writeText(listingOf(ride, report, today)), type: PLAIN }),
  markdown: (ride, report, { today }) => ({ data: writeMarkdown(listingOf(ride, report, today)), type: 'text/markdown;charset=utf-8' }),
  // Spreadsheets take a file for UTF-8 by this mark alone.
  csv: (ride, report) => ({ data: `\ufeff${csvOf(ride, report)}`, type: 'text/csv;charset=utf-8' }),
  captions: (ride, report) => ({ data: writeWebVtt(rideCaptions(ride, report), isolated(ride.title)), type: VTT }),
  songCaptions: (ride, report) => ({ data: zippedCaptions(ride, report), type: 'application/zip' }),
  chapters: (ride, report) => ({ data: writeWebVtt(chaptersOf(ride, report), isolated(ride.title)), type: VTT }),
  chapterText: (ride, report) => ({ data: chapterLines(ride, report), type: PLAIN }),
  xspf: (ride, report) => ({ data: writeXspf(ride.title, tracksOf(ride, report)), type: 'application/xspf+xml' }),
  m3u8: (ride, report) => ({ data: writeM3u8(tracksOf(ride, report)), type: 'application/vnd.apple.mpegurl' }),
  calendar: (ride, report, moment) => ({ data: calendarOf(ride, report, moment), type: 'text/calendar;charset=utf-8' }),
}

/** A ride as one of the files others read. Loaded when the first one is asked for. */
export const exportFile = (id: ExportId, ride: Ride, report: RideReport, moment: ExportMoment): ExportedFile =>
  MAKERS[id](ride, report, moment)

/** "0:00 Paper Comets", a chapter a line, as video sites take them. */
const chapterLines = (ride: Ride, report: RideReport): string =>
  chaptersOf(ride, report)
    .map(({ from, text }) => `${formatClock(from)} ${text.replace(/\s+/g, ' ').trim()}\n`)
    .join('')

/** One caption file a song, in order, in one archive. */
function zippedCaptions(ride: Ride, report: RideReport): Uint8Array {
  const files = report.sections.flatMap((_, index) => {
    const section = ride.sections[index]!
    if (!section.song) return []
    const name = tell(sectionName(ride, section))
    return [
      [
        `${String(index + 1).padStart(2, '0')}-${fileStem(name)}.vtt`,
        strToU8(writeWebVtt(songCaptions(ride, report, index), isolated(name))),
      ] as const,
    ]
  })
  return zipSync(Object.fromEntries(files), { mtime: '2020-01-01T00:00:00' })
}
