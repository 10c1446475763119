import type { TaughtClass } from '#plan/kept/taught.ts'
import { songKey } from '#plan/songs/shelfSong.ts'
import type { Day } from '#units/day.ts'

/** How often each song was played to a class, and when last, by its key. */
export function taughtBySong(log: readonly TaughtClass[]): Map<string, { times: number; last: Day }> {
  const found = new Map<string, { times: number; last: Day }>()
  for (const { day, sections } of log) {
    const played = sections.filter(({ song, outcome }) => song && outcome !== 'skipped')
    for (const key of new Set(played.map(songKey))) {
      const { times, last } = found.get(key) ?? { times: 0, last: day }
      found.set(key, { times: times + 1, last: [day, last].sort().at(-1)! })
    }
  }
  return found
}
