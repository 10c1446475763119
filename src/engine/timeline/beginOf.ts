import type { SectionReport } from '#engine/played.ts'
import type { Seconds } from '#units/units.ts'

/**
 * When a song begins, on the ride clock, for everything that tells its time: sheets, chapters, captions,
 * the calendar and the times to look at the clock. It is the section's count one, where its first block
 * starts and from which riders count; also where it fades in over the song before. The lead-in before it
 * belongs to what was before: the last song, or the welcome.
 */
export const beginOf = ({ one }: Pick<SectionReport, 'one'>): Seconds => one
