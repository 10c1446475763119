import type { BeatGrid } from '#plan/model.ts'
import { countAt, secondAt } from '#plan/songs/beatGrid.ts'
import { faultOfOdd, type OddPlace } from '#plan/songs/oddBeats.ts'
import type { Counts, Seconds } from '#units/units.ts'

/** What taps on the ones say of a song's bars. */
interface TappedOnes {
  beatsPerBar: BeatGrid['beatsPerBar']
  /** The beat that becomes the first one, as it is counted now; none is nought. */
  shift: Counts
  /** The odd places the song then has, as it is counted then; absent where the taps show no new ones. */
  odd?: OddPlace[]
  /** How many of the taps agree. */
  agree: number
  of: number
}

/** Fewest taps bars can be told from, and how many make it sure (common practice: sixteen bars are four phrases). */
export const FEWEST_ONES = 4
export const SURE_ONES = 16

/** As many have to agree, or they say nothing. */
const LEAST_SHARE = 0.6
/** As many have to where bars are taken to shift inside the song, and what one shift has to win: three taps in a row that agree again (own choice). */
const SURE_SHARE = 0.85
const SHIFT_COST = 2.5

const BARS = [4, 3, 6] as const

/**
 * Bars from taps on the first beats of some of them, held against the beats that are known: how many
 * beats lie between them, and on which they fall. Taps may be early or late by almost half a beat, and
 * miss bars. Where they agree on one beat of the bar up to some place and on another after it, the song has beats over
 * or missing there: its tempo is steady, so they are an odd place and no bend. Null for too few or where they do not agree.
 *
 * @param ones seconds of the song
 */
export function tapOnes(grid: BeatGrid, ones: readonly Seconds[]): TappedOnes | null {
  if (ones.length < FEWEST_ONES) return null
  const beats = ones.map((second) => Math.round(countAt(grid, second)))
  const gap = commonGap(beats)
  const likely = (bar: number) => (bar === gap ? 2 : bar === grid.beatsPerBar ? 1 : 0)
  const byScore = (a: Reading, b: Reading) => b.score - a.score || likely(b.beatsPerBar) - likely(a.beatsPerBar)
  const readings = BARS.flatMap((beatsPerBar) => [vote(beats, beatsPerBar), shifting(beats, beatsPerBar)])
  for (const best of readings.sort(byScore)) {
    if (best.score < LEAST_SHARE * ones.length) return null
    const said = { beatsPerBar: best.beatsPerBar, shift: nearestShift(grid, best), agree: best.agree, of: ones.length }
    if (best.odd.length === 0) return said
    const odd = countedAnew(grid.odd ?? [], best.odd, said.shift)
    if (best.agree >= SURE_SHARE * ones.length && faultOfOdd(odd) === undefined) return { ...said, odd }
  }
  return null
}

/** One way to hear the taps: the bar, where its ones are at first, and beats over or missing before beats as they are counted now. */
interface Reading {
  beatsPerBar: BeatGrid['beatsPerBar']
  place: Counts
  agree: number
  score: number
  odd: OddPlace[]
}

/** The place in the bar that most taps fall on. */
function vote(beats: readonly Counts[], beatsPerBar: BeatGrid['beatsPerBar']): Reading {
  const votes = Array.from({ length: beatsPerBar }, (_, place) => beats.filter((beat) => modulo(beat, beatsPerBar) === place).length)
  const agree = Math.max(...votes)
  return { beatsPerBar, place: votes.indexOf(agree), agree, score: agree, odd: [] }
}

/** The places in the bar, one after another, that explain the most taps with the fewest shifts between them (Viterbi's way through them). */
function shifting(beats: readonly Counts[], beatsPerBar: BeatGrid['beatsPerBar']): Reading {
  const places = Array.from({ length: beatsPerBar }, (_, place) => place)
  let scores = places.map(() => 0)
  const before: number[][] = []
  for (const beat of beats) {
    const best = scores.indexOf(Math.max(...scores))
    const from = places.map((place) => (scores[best]! - SHIFT_COST > scores[place]! ? best : place))
    scores = places.map((place) => {
      const held = from[place] === place ? scores[place]! : scores[best]! - SHIFT_COST
      return held + (modulo(beat, beatsPerBar) === place ? 1 : 0)
    })
    before.push(from)
  }
  const score = Math.max(...scores)
  const way = Array<number>(beats.length).fill(scores.indexOf(score))
  for (let i = beats.length - 1; i > 0; i--) way[i - 1] = before[i]![way[i]!]!
  const agreeing = beats.flatMap((beat, i) => (modulo(beat, beatsPerBar) === way[i] ? [{ beat, place: way[i]! }] : []))
  const odd = agreeing.slice(1).flatMap(({ beat, place }, i): OddPlace[] => {
    const last = agreeing[i]!
    return place === last.place ? [] : [[beat, beyondBars(beat - last.beat, beatsPerBar)]]
  })
  return { beatsPerBar, place: way[0]!, agree: agreeing.length, score, odd: odd.filter(([, over]) => over !== 0) }
}

/** What is over whole bars between two ones, or missing: whichever is less; as much of either is a longer bar, unless there is none before it. */
function beyondBars(gap: Counts, bar: number): number {
  const over = modulo(gap, bar)
  const bars = Math.max(1, over <= bar / 2 ? Math.floor(gap / bar) : Math.ceil(gap / bar))
  return gap - bars * bar
}

/** Old odd places and new ones, both by beats as they are counted now, under the counts they have once the new ones and the shift count. */
function countedAnew(old: readonly OddPlace[], found: readonly OddPlace[], shift: Counts): OddPlace[] {
  const over = new Map<Counts, number>()
  for (const [at, beats] of [...old, ...found]) {
    const earlier = found.reduce((sum, [place, more]) => (place <= at ? sum + more : sum), 0)
    const count = at - earlier - shift
    if (count > 0) over.set(count, (over.get(count) ?? 0) + beats)
  }
  return [...over].filter(([, beats]) => beats !== 0).sort((a, b) => a[0] - b[0])
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
