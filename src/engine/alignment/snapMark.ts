import type { Counts } from '#units/units.ts'

/**
 * The count a mark stands on that was tapped at a place in a song: of the nearest eight, or the nearest
 * count; never before the song's first beat.
 *
 * @param from a count on which an eight begins
 */
export function snapMark(place: Counts, step: Counts, from: Counts = 0): Counts {
  const snapped = from + Math.round((place - from) / step) * step
  // An in-point may stand a few counts into an eight, which then has no start before it.
  return snapped >= 0 ? snapped : snapped + step
}
