import type { TaughtClass } from '#plan/kept/taught.ts'
import { songKey } from '#plan/songs/shelfSong.ts'
import type { Day } from '#units/day.ts'

/** A class a song was played to. */
interface PlayedTo {
  id: string
  day: Day
  title: string
}

/** The classes a song was played to, newest first; those that skipped it are none. */
export function classesOf(key: string, log: readonly TaughtClass[]): PlayedTo[] {
  return log
    .filter(({ sections }) => sections.some((section) => section.song && section.outcome !== 'skipped' && songKey(section) === key))
    .map(({ id, day, title }) => ({ id, day, title }))
    .toSorted((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0))
}
