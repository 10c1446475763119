import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'

/** The files a ride can be given out as. */
export const EXPORTS = [
  { id: 'text', label: 'plain text', ending: 'txt', hint: 'the sheet as lines' },
  { id: 'markdown', label: 'Markdown', ending: 'md', hint: 'the sheet as tables' },
  { id: 'csv', label: 'CSV', ending: 'csv', hint: 'one row a change, for a spreadsheet' },
  { id: 'captions', label: 'cues in ride time', ending: 'cues.vtt', hint: 'WebVTT, from the start of the class' },
  { id: 'songCaptions', label: 'cues in song time', ending: 'song-cues.zip', hint: 'WebVTT, one file a song from its own start' },
  { id: 'chapters', label: 'chapters', ending: 'chapters.vtt', hint: 'WebVTT, one chapter a section' },
  { id: 'chapterText', label: 'chapters as text', ending: 'chapters.txt', hint: 'a time and a name a line' },
  { id: 'xspf', label: 'playlist XSPF', ending: 'xspf', hint: 'titles, artists and lengths' },
  { id: 'm3u8', label: 'playlist M3U8', ending: 'm3u8', hint: 'expects the songs beside it, named in order: “01 Artist - Title.mp3”' },
  { id: 'calendar', label: 'calendar entry', ending: 'ics', hint: 'for the day and time below' },
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
