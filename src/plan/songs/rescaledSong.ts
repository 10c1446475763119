import { LIMITS } from '#plan/document/schema.ts'
import { type BeatGrid, type Song, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import type { Bpm, Counts } from '#units/units.ts'
import { secondAt } from './beatGrid.ts'
import { faultOfOdd, type OddPlace, startOfOdd } from './oddBeats.ts'
import { strikesForTempo } from './sectionsFromPlaylist.ts'

/** Twice the tempo, or half of it. */
export type BeatFactor = 2 | 0.5

/** Whether a ride holds such a tempo. */
export const isTempo = (bpm: Bpm): boolean => bpm >= LIMITS.tempo.low && bpm <= LIMITS.tempo.high

/**
 * A song read at twice or half its tempo: the same sound, the same legs, and marks and quiet windows where they were.
 * The same object without beats, and outside 20 to 400 beats a minute.
 */
export function rescaledSong(song: Song, factor: BeatFactor): Song {
  const { grid } = song
  if (!grid) return song
  const bpm = tempoOf(grid) * factor
  if (!isTempo(bpm)) return song
  const scale = (count: Counts): Counts => Math.round(count * factor)
  return {
    ...song,
    grid: rescaledGrid(grid, factor),
    strikesPerBeat: otherStrikes(song.strikesPerBeat, factor) ?? (song.strikesPerBeat === null ? null : strikesForTempo(bpm)),
    ...(song.marks && { marks: song.marks.map((mark) => ({ ...mark, count: scale(mark.count) })) }),
    ...(song.quiet && { quiet: song.quiet.map(({ from, to }) => ({ from: scale(from), to: Math.max(scale(from) + 1, scale(to)) })) }),
  }
}

/** A song read in the octave about a tempo: at its own, its half or its double, whichever is nearest to it. The same object where that is its own. */
export function inOctaveAbout(song: Song, bpm: Bpm): Song {
  const octaves = song.grid ? Math.round(Math.log2(bpm / tempoOf(song.grid))) : 0
  return octaves === 0 ? song : rescaledSong(song, octaves > 0 ? 2 : 0.5)
}

/**
 * The same seconds at other counts. Anchors are whole counts: where halving would make them none, the outer two carry
 * the tempo. Half of an odd number of beats is none that could be counted: such a place is held as a bend of the tempo.
 */
export function rescaledGrid(grid: BeatGrid, factor: BeatFactor): BeatGrid {
  const { odd, ...rest } = grid
  if (!odd) return { ...rest, anchors: rescaledAnchors(grid.anchors, factor) }
  if (factor === 2) {
    return { ...rest, anchors: rescaledAnchors(grid.anchors, factor), odd: odd.map(([count, beats]) => [2 * count, 2 * beats]) }
  }
  const halved = odd.filter(([, beats]) => beats % 2 === 0).map(([count, beats]): OddPlace => [Math.ceil(count / 2), beats / 2])
  const kept = faultOfOdd(halved) === undefined ? halved : []
  const bent = kept.length === halved.length ? odd.filter(([, beats]) => beats % 2 !== 0) : odd
  return { ...rest, anchors: halvedAnchors(grid, bent), ...(kept.length > 0 && { odd: kept }) }
}

/** Every second count's second, where an anchor stands and around each place that becomes a bend. */
function halvedAnchors(grid: BeatGrid, bent: readonly OddPlace[]): BeatGrid['anchors'] {
  const even = grid.anchors.filter(([count]) => count % 2 === 0).map(([count]) => count / 2)
  const edges = bent.flatMap((place) => {
    const [from, to] = [Math.floor(startOfOdd(place) / 2), Math.ceil(place[0] / 2)]
    return [Math.max(0, from - 1), from, to, to + 1]
  })
  const counts = new Set([...even, ...edges])
  const [[c0], [c1]] = [grid.anchors[0]!, grid.anchors.at(-1)!]
  if (counts.size < 2) for (const count of [Math.floor(c0 / 2), Math.floor(c0 / 2) + (c1 - c0)]) counts.add(count)
  return [...counts].sort((a, b) => a - b).map((count) => [count, Number(secondAt(grid, 2 * count).toFixed(6))])
}

/** Anchors at other counts; on halving those on odd counts go, and where fewer than two stay all times are spread to whole counts by doubling the span. */
function rescaledAnchors(anchors: BeatGrid['anchors'], factor: BeatFactor): BeatGrid['anchors'] {
  if (factor === 2) return anchors.map(([count, second]) => [count * 2, second])
  const even = anchors.filter(([count]) => count % 2 === 0)
  if (even.length >= 2) return even.map(([count, second]) => [count / 2, second])
  const [[c0, s0], [c1, s1]] = [anchors[0]!, anchors.at(-1)!]
  const at = Math.floor(c0 / 2)
  const perCount = (2 * (s1 - s0)) / (c1 - c0)
  const first = s0 + (at * 2 - c0) * (perCount / 2)
  return [
    [at, first],
    [at + (c1 - c0), first + (c1 - c0) * perCount],
  ]
}

const STRIKES: readonly StrikesPerBeat[] = [0.5, 1, 2]

/** Strikes that give the same legs at the other tempo; undefined where there are none. */
export const otherStrikes = (strikes: StrikesPerBeat, factor: BeatFactor): StrikesPerBeat | undefined =>
  strikes === null ? null : STRIKES.find((each) => each === strikes / factor)
