import type { Counts } from '#units/units.ts'

/**
 * Beats a song has too many or too few for its eights: before count `count` there are `beats` more than the counts
 * say, or, below 0, so many fewer. Counts keep their numbers, so that eights and phrases stand on the music.
 *
 * Between whole counts beats and counts are one to one but for two stretches. The count before beats that are over
 * lasts until they are over: from `count` − 1 to `count` there are 1 + `beats`. Counts whose beats are missing are
 * never heard: the last one before them and `count` are one beat apart, and they share it evenly. So both ways there
 * is one answer, and more is always later.
 */
export type OddPlace = readonly [count: Counts, beats: number]

/** The last count before an odd place that is heard in its full length up to it; the place reaches from there to its own count. */
export const startOfOdd = ([count, beats]: OddPlace): Counts => count - 1 - Math.max(0, -beats)

/** Which beat a count is, both from 0; a fraction inside a count and where beats are missing. */
export function beatAt(odd: readonly OddPlace[] | undefined, count: Counts): number {
  if (odd === undefined) return count
  let over = 0
  for (const place of odd) {
    const [at, beats] = place
    const from = startOfOdd(place)
    if (count <= from) break
    if (count < at) return from + over + ((count - from) * (at - from + beats)) / (at - from)
    over += beats
  }
  return count + over
}

/** The count of a beat; the inverse of `beatAt`. A whole beat has a whole count unless it is over. */
export function countOfBeat(odd: readonly OddPlace[] | undefined, beat: number): Counts {
  if (odd === undefined) return beat
  let over = 0
  for (const place of odd) {
    const [at, beats] = place
    const from = startOfOdd(place)
    if (beat <= from + over) break
    if (beat < at + over + beats) return from + ((beat - from - over) * (at - from)) / (at - from + beats)
    over += beats
  }
  return beat - over
}

/** What keeps a list of odd places from being one, by the place in it. */
interface OddFault {
  index: number
  fault: 'notWhole' | 'none' | 'notRising' | 'noRoom'
}

/**
 * The first thing wrong with a list: counts and beats are whole, no place has none, counts rise, and no place begins
 * before the one before it has ended, nor before count 0.
 */
export function faultOfOdd(odd: readonly OddPlace[]): OddFault | undefined {
  let end = 0
  for (const [index, place] of odd.entries()) {
    const [count, beats] = place
    if (!Number.isInteger(count) || !Number.isInteger(beats)) return { index, fault: 'notWhole' }
    if (beats === 0) return { index, fault: 'none' }
    if (index > 0 && count <= end) return { index, fault: 'notRising' }
    if (startOfOdd(place) < end) return { index, fault: 'noRoom' }
    end = count
  }
  return undefined
}
