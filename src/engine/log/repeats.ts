import type { TaughtClass } from '#plan/kept/taught.ts'
import { type Day, dayNumber } from '#units/day.ts'
import { novelty } from './novelty.ts'
import { patternOf, songKey } from './pattern.ts'

/** Classes before this one that are looked at: regulars remember no further (common practice). */
const LOOKED_AT = 6
/** A song played in so many of the last classes, or in the last one, should rest (common practice). */
const OFTEN = 3

/** What regulars of a slot have met before. */
interface Repeats {
  /** 0 for a repeat, 1 for all new; null where the slot has no class before. */
  novelty: number | null
  /** Classes compared, at most six. */
  compared: number
  /** Songs of this class they have ridden to lately, the most worn first. */
  songs: RepeatedSong[]
}

interface RepeatedSong {
  title: string
  artist?: string
  /** In how many of the classes compared. */
  times: number
  /** Whole weeks since the last time. */
  weeksAgo: number
  /** Leave it out this time. */
  rest: boolean
}

/**
 * What a class on a day repeats.
 *
 * @param before the classes of its slot before it, newest first
 */
export function repeatsOf(taught: Pick<TaughtClass, 'sections'>, day: Day, before: readonly TaughtClass[]): Repeats {
  const compared = before.slice(0, LOOKED_AT)
  const patterns = compared.map(patternOf)
  const songs = new Map(
    taught.sections.filter(({ song, outcome }) => song && outcome !== 'skipped').map((section) => [songKey(section), section]),
  )
  const repeated = [...songs].flatMap(([key, { title, artist }]): RepeatedSong[] => {
    const inClasses = patterns.flatMap((pattern, j) => (pattern.songs.has(key) ? [j] : []))
    const last = inClasses[0]
    if (last === undefined) return []
    const weeksAgo = Math.max(0, Math.floor((dayNumber(day) - dayNumber(compared[last]!.day)) / 7))
    return [{ title, ...(artist && { artist }), times: inClasses.length, weeksAgo, rest: last === 0 || inClasses.length >= OFTEN }]
  })
  return {
    novelty: novelty(patternOf(taught), patterns),
    compared: compared.length,
    songs: repeated.sort((a, b) => b.times - a.times || a.weeksAgo - b.weeksAgo),
  }
}
