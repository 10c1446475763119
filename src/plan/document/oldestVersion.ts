import type { Ride } from '#plan/model.ts'
import { bendsOf } from '#plan/songs/bendsOf.ts'

/**
 * The oldest version of the document that is read as this ride: its own only where an older one has no place for
 * something it holds, or would be read otherwise. Links and revisions name that one, so that a ride that gains nothing
 * by a new version keeps both, and whoever has an older page can open it.
 */
export function oldestVersion({ sections }: Pick<Ride, 'sections'>): 1 | 2 {
  const needsOdd = sections.some(({ song }) => song?.grid && (song.grid.odd !== undefined || bendsOf(song.grid.anchors).length > 0))
  return needsOdd ? 2 : 1
}
