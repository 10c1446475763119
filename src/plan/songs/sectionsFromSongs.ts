import type { NewId } from '#plan/copies.ts'
import { DEFAULT_LEAD_IN } from '#plan/defaults.ts'
import type { Section, Song } from '#plan/model.ts'

/**
 * An empty section for every song, open from its first count to its last so that the ride adds
 * up from the start and blocks fill it from the front.
 *
 * @param first whether the first of them opens the ride, which needs no time to change songs
 */
export function sectionsFromSongs(songs: readonly Song[], newId: NewId, first = true): Section[] {
  return songs.map((song, index) => ({ id: newId(), song, leadInSeconds: index === 0 && first ? 0 : DEFAULT_LEAD_IN, blocks: [] }))
}
