import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'

/** The files a ride can be given out as, and how their names end. */
export const EXPORTS = [
  { id: 'text', ending: 'txt' },
  { id: 'markdown', ending: 'md' },
  { id: 'csv', ending: 'csv' },
  { id: 'captions', ending: 'cues.vtt' },
  { id: 'songCaptions', ending: 'song-cues.zip' },
  { id: 'chapters', ending: 'chapters.vtt' },
  { id: 'chapterText', ending: 'chapters.txt' },
  { id: 'xspf', ending: 'xspf' },
  { id: 'm3u8', ending: 'm3u8' },
  { id: 'calendar', ending: 'ics' },
] as const

export type ExportId = (typeof EXPORTS)[number]['id']

/** What an export needs besides the ride. */
export interface ExportDay {
  /** "2026-11-25" */
  day: string
  /** "18:30" */
  startsAt: string
}

export interface ExportedFile {
  data: string | Uint8Array
  /** Its media type. */
  type: string
}

/** Makes a file; given by the app, which fetches the writers when one is first asked for. */
export type MakeExport = (id: ExportId, ride: Ride, report: RideReport, day: ExportDay) => Promise<ExportedFile>
