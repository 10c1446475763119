import type { TaughtClass } from '#plan/kept/taught.ts'
import type { Day } from '#units/day.ts'
import type { Seconds } from '#units/units.ts'

/** One song played in one class, as those who license music ask for it. */
export interface SongUsed {
  day: Day
  startedAt?: string
  room: string
  ride: string
  title: string
  artist?: string
  seconds: Seconds
  headCount?: number
}

/** Songs played from one day to another, both included, in the order they were played. */
export function songsUsed(log: readonly TaughtClass[], from: Day, to: Day): SongUsed[] {
  return log
    .filter(({ day }) => day >= from && day <= to)
    .toSorted((a, b) => (momentOf(a) < momentOf(b) ? -1 : 1))
    .flatMap(({ day, startedAt, bookedAt, room, title: ride, headCount, sections }) =>
      sections
        .filter(({ song, outcome, seconds }) => song && outcome !== 'skipped' && seconds > 0)
        .map(({ title, artist, seconds }) => ({ day, startedAt: startedAt ?? bookedAt, room, ride, title, artist, seconds, headCount })),
    )
}

const momentOf = ({ day, startedAt, bookedAt }: TaughtClass): string => `${day} ${startedAt ?? bookedAt ?? ''}`
