import type { CadencePiece, PlayedCadence } from '#engine/played.ts'
import type { Laid } from '#engine/timeline/laySection.ts'
import type { BeatGrid, Section } from '#plan/model.ts'
import { anchorsBetween, beatOf, countOf, secondAt, stretchAt } from '#plan/songs/beatGrid.ts'
import { type Bpm, type Counts, EIGHT, type Rpm, type Seconds } from '#units/units.ts'
import { steadyCadence } from './steadyCadence.ts'
import { strikesOf } from './strikesOf.ts'

/**
 * Anchors closer than an eight are beats as they were heard, a little early and late: an eight of them is ridden at its
 * mean, since legs do not jerk from beat to beat. Beats that part by more than this share are no such jitter and stay
 * apart. (Own choice: legs so joined do the same work on a friction brake, and on a magnetic one to a thousandth.)
 */
const JITTER = 0.06
/** Longer stretches are one where their tempo is the same but for the rounding of anchors, as a share. */
const SAME = 2e-5

type Turning = Extract<PlayedCadence, { kind: 'turning' }>

/** Cadence that strikes on the beat: tempo × strikes per beat ÷ 2, one turn being two strikes. */
const cadenceOnBeat = (bpm: Bpm, strikesPerBeat: number): Rpm => (bpm * strikesPerBeat) / 2

/**
 * The cadence the beat alone gives a block, piece by piece as the tempo moves from anchor to anchor. Beats over or
 * missing change nothing: legs follow beats, not counts. `from` and `to` are the means of the first eight beats and the
 * last. Undefined off the beat or without a grid.
 */
export function beatCadence(
  { block, countFrom, countTo }: Pick<Laid, 'block' | 'countFrom' | 'countTo'>,
  section: Section,
): Turning | undefined {
  const grid = section.song?.grid
  const strikes = strikesOf(block, section)
  if (!grid || strikes === null || countFrom === undefined || countTo === undefined) return undefined
  const first = (section.inCount ?? 0) + countFrom
  const last = (section.inCount ?? 0) + countTo
  const only = tempoInside(grid, first, last)
  if (only !== undefined) return steadyCadence(cadenceOnBeat(only, strikes))
  const start = secondAt(grid, first)
  const pieces = joined(grid, first, last).map(
    ({ beats, seconds, end }): CadencePiece => ({ to: end - start, rpm: cadenceOnBeat((60 * beats) / seconds, strikes) }),
  )
  if (pieces.length === 1) return steadyCadence(pieces[0]!.rpm)
  const reach = Math.min(EIGHT, beatOf(grid, last) - beatOf(grid, first))
  const rpms = pieces.map(({ rpm }) => rpm)
  return {
    kind: 'turning',
    from: cadenceOnBeat(tempoBetween(grid, first, countOf(grid, beatOf(grid, first) + reach)), strikes),
    to: cadenceOnBeat(tempoBetween(grid, countOf(grid, beatOf(grid, last) - reach), last), strikes),
    least: Math.min(...rpms),
    most: Math.max(...rpms),
    mean: cadenceOnBeat(tempoBetween(grid, first, last), strikes),
    pieces,
  }
}

/** The tempo between two counts that lie in one stretch of the grid: that stretch's own, so that a song of constant tempo gives the same number everywhere. */
function tempoInside(grid: BeatGrid, from: Counts, to: Counts): Bpm | undefined {
  const [[c0, s0], [c1, s1]] = stretchAt(grid, from, 0)
  const isInside = to <= c1 || c1 === grid.anchors.at(-1)![0]
  return isInside ? (60 * (beatOf(grid, c1) - beatOf(grid, c0))) / (s1 - s0) : undefined
}

/** Mean tempo between two counts of a song. */
function tempoBetween(grid: BeatGrid, from: Counts, to: Counts): Bpm {
  return tempoInside(grid, from, to) ?? (60 * (beatOf(grid, to) - beatOf(grid, from))) / (secondAt(grid, to) - secondAt(grid, from))
}

interface TempoPiece {
  beats: number
  seconds: Seconds
  /** Second of the song at which it ends. */
  end: Seconds
  /** The shortest and the longest beat in it. */
  fastest: Seconds
  slowest: Seconds
}

/** The stretches between anchors, those of one tempo as one. */
function joined(grid: BeatGrid, first: Counts, last: Counts): TempoPiece[] {
  const stretches: TempoPiece[] = []
  let [beat, second] = [beatOf(grid, first), secondAt(grid, first)]
  for (const [count, end] of [...anchorsBetween(grid, first, last), [last, secondAt(grid, last)] as const]) {
    const beats = beatOf(grid, count) - beat
    const seconds = end - second
    beat += beats
    second = end
    const before = stretches.at(-1)
    const period = seconds / beats
    const fastest = Math.min(period, before?.fastest ?? period)
    const slowest = Math.max(period, before?.slowest ?? period)
    const share = slowest / fastest - 1
    if (before && (share <= SAME || (share <= JITTER && before.beats + beats <= EIGHT))) {
      Object.assign(before, { beats: before.beats + beats, seconds: before.seconds + seconds, end, fastest, slowest })
    } else stretches.push({ beats, seconds, end, fastest: period, slowest: period })
  }
  return stretches
}
