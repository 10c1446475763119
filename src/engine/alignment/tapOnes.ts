import { countAt, secondAt } from '#plan/beatGrid.ts'
import type { BeatGrid } from '#plan/model.ts'
import type { Counts, Seconds } from '#units/units.ts'

/** What taps on the ones say of a song's bars. */
interface TappedOnes {
  beatsPerBar: BeatGrid['beatsPerBar']
  /** The beat that becomes the first one, as it is counted now; none is nought. */
  shift: Counts
  /** How many of the taps agree. */
  agree: number
  of: number
}

/** Fewest taps bars can be told from, and how many make it sure (common practice: sixteen bars are four phrases). */
export const FEWEST_ONES = 4
export const SURE_ONES = 16

/** As many have to agree, or they say nothing. */
const LEAST_SHARE = 0.6

const BARS = [4, 3, 6] as const

/**
 * Bars from taps on the first beats of some of them, held against the beats that are known: how many
 * beats lie between them, and on which they fall. Taps may be early or late by almost half a beat, and
 * miss bars. Null for too few or where they do not agree.
 *
 * @param ones seconds of the song
 */
export function tapOnes(grid: BeatGrid, ones: readonly Seconds[]): TappedOnes | null {
  if (ones.length < FEWEST_ONES) return null
  const beats = ones.map((second) => Math.round(countAt(grid, second)))
  const gap = commonGap(beats)
  const readings = BARS.map((beatsPerBar) => ({ beatsPerBar, ...vote(beats, beatsPerBar) }))
  const likely = (bar: number) => (bar === gap ? 2 : bar === grid.beatsPerBar ? 1 : 0)
  const [best] = readings.sort((a, b) => b.agree - a.agree || likely(b.beatsPerBar) - likely(a.beatsPerBar))
  if (!best || best.agree < LEAST_SHARE * ones.length) return null
  return { beatsPerBar: best.beatsPerBar, shift: nearestShift(grid, best), agree: best.agree, of: ones.length }
}

/** The place in the bar that most taps fall on. */
function vote(beats: readonly Counts[], bar: number): { place: Counts; agree: number } {
  const votes = Array.from({ length: bar }, (_, place) => beats.filter((beat) => modulo(beat, bar) === place).length)
  const agree = Math.max(...votes)
  return { place: votes.indexOf(agree), agree }
}

/** The distance between two taps in a row that comes most often. */
function commonGap(beats: readonly Counts[]): Counts {
  const gaps = new Map<number, number>()
  for (const [i, beat] of beats.slice(1).entries()) gaps.set(beat - beats[i]!, (gaps.get(beat - beats[i]!) ?? 0) + 1)
  return [...gaps].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 0
}

/** Forwards or backwards, whichever is less and stays inside the song. */
function nearestShift(grid: BeatGrid, { beatsPerBar, place }: { beatsPerBar: number; place: Counts }): Counts {
  const later = modulo(place - grid.anchors[0]![0], beatsPerBar)
  const earlier = later - beatsPerBar
  return later > -earlier && secondAt(grid, grid.anchors[0]![0] + earlier) >= 0 ? earlier : later
}

const modulo = (value: number, by: number): number => ((value % by) + by) % by
