import { snapMark } from '#engine/alignment/snapMark.ts'
import { markSong } from '#plan/commands/markSong.ts'
import type { Section } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { countAt, eightOf } from '#plan/songs/beatGrid.ts'
import type { AppStore } from '#store/state.ts'
import type { Counts, Seconds } from '#units/units.ts'

/** What parts of a song are called (common practice); others are written into its marks. */
export const PARTS = ['intro', 'verse', 'build', 'chorus', 'drop', 'break', 'end'] as const

/** What a mark goes to: the nearest eight or the nearest count. */
export type MarkStep = 'eight' | 'count'

/** The count of a section's song that is meant by a press at a second of it; null without beats. */
export function countMeant({ song, inCount = 0 }: Section, second: Seconds, step: MarkStep): Counts | null {
  if (!song?.grid) return null
  return snapMark(countAt(song.grid, second), step === 'eight' ? eightOf(song.grid) : 1, inCount)
}

/** Writes a mark where a song is, as one undo step. The count it stands on; null where it cannot be written. */
export function markHere(store: AppStore, sectionId: string, second: Seconds, label: string, step: MarkStep): Counts | null {
  const { ride, run } = store.getState()
  const section = ride && findSection(ride, sectionId)
  const count = section ? countMeant(section, second, step) : null
  if (!ride || count === null) return null
  return run(markSong(ride, { sectionId, count, label })) ? count : null
}
