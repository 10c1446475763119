import type { NewId } from '#plan/copies.ts'
import { DEFAULT_LEAD_IN } from '#plan/defaults.ts'
import type { Ride, Song } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { sectionsFromSongs } from '#plan/songs/sectionsFromSongs.ts'
import type { Seconds } from '#units/units.ts'
import { language, words } from '#words/words.ts'

/** Lengths of slots as rooms book them, in minutes; common practice. */
const SLOTS = [20, 30, 45, 60, 75, 90]
/** Songs this little longer than a slot are cut by a few eights and fit it. */
const TRIMMED: Seconds = 60

/** A new ride of these songs in this order, its sections still without blocks, in the shortest slot that holds them. */
export function rideOfSongs(songs: readonly Song[], newId: NewId): Ride {
  const ride = blankRide({ newId, title: words.songs.newRide, language, slotMinutes: slotFor(playedSeconds(songs)) })
  return { ...ride, sections: sectionsFromSongs(songs, newId) }
}

/** Time the songs take one after another, with the usual time to change between them. */
export const playedSeconds = (songs: readonly Song[]): Seconds =>
  songs.reduce((sum, { lengthSeconds }) => sum + lengthSeconds, 0) + DEFAULT_LEAD_IN * Math.max(0, songs.length - 1)

function slotFor(seconds: Seconds): number {
  return SLOTS.find((minutes) => seconds <= 60 * minutes + TRIMMED) ?? Math.min(180, 5 * Math.ceil(seconds / 300))
}
