import type { BeatGrid, Section, Song } from '#plan/model.ts'
import { type Bpm, type Counts, EIGHT, type Seconds } from '#units/units.ts'
import { beatAt, countOfBeat, type OddPlace } from './oddBeats.ts'

/**
 * Second of the song at which a count falls: between two anchors, and beyond the outer ones on their line, beats are
 * evenly spaced. An anchor's own count gives exactly its second.
 */
export function secondAt(grid: BeatGrid, count: Counts): Seconds {
  const [[c0, s0], [c1, s1]] = stretchAt(grid, count, 0)
  if (count === c1) return s1
  const b0 = beatOf(grid, c0)
  return s0 + ((beatOf(grid, count) - b0) * (s1 - s0)) / (beatOf(grid, c1) - b0)
}

/** Count of the song at a second, as a fraction; the inverse of `secondAt`. */
export function countAt(grid: BeatGrid, second: Seconds): Counts {
  const [[c0, s0], [c1, s1]] = stretchAt(grid, second, 1)
  if (second === s1) return c1
  const b0 = beatOf(grid, c0)
  return countOfBeat(grid.odd, b0 + ((second - s0) * (beatOf(grid, c1) - b0)) / (s1 - s0))
}

/** The anchors strictly between two counts. */
export function anchorsBetween(grid: BeatGrid, from: Counts, to: Counts): Anchor[] {
  const { anchors } = grid
  const between: Anchor[] = []
  for (let i = indexAt(anchors, from, 0); i < anchors.length && anchors[i]![0] < to; i++)
    if (anchors[i]![0] > from) between.push(anchors[i]!)
  return between
}

/** Which beat of the song a count is, from 0: the counts before it, and the beats over or missing among them. */
export const beatOf = ({ odd }: Pick<BeatGrid, 'odd'>, count: Counts): number => (odd === undefined ? count : beatAt(odd, count))

type Anchor = BeatGrid['anchors'][number]

/** The two anchors around a count (axis 0) or a second (axis 1), by halving: a grid heard in audio has one a beat. */
export function stretchAt({ anchors }: BeatGrid, value: number, axis: 0 | 1): [Anchor, Anchor] {
  const left = indexAt(anchors, value, axis)
  return [anchors[left]!, anchors[left + 1]!]
}

function indexAt(anchors: readonly Anchor[], value: number, axis: 0 | 1): number {
  let left = 0
  let last = anchors.length - 2
  while (left < last) {
    const middle = (left + last + 1) >> 1
    if (anchors[middle]![axis] <= value) left = middle
    else last = middle - 1
  }
  return left
}

/** The count of a beat of the song; the inverse of `beatOf`. */
export const countOf = ({ odd }: Pick<BeatGrid, 'odd'>, beat: number): Counts => (odd === undefined ? beat : countOfBeat(odd, beat))

/**
 * A grid of constant tempo. Counts in anchors are whole, so the second anchor stands a
 * minute on for a whole tempo and ten, a hundred or a thousand minutes on for one with decimals.
 *
 * @param bpm above 0; three decimals are kept
 * @param firstBeat seconds from the start of the song to count 0
 */
export function gridOfTempo(bpm: Bpm, firstBeat: Seconds = 0, beatsPerBar: BeatGrid['beatsPerBar'] = 4): BeatGrid {
  const thousandths = Math.max(1, Math.round(bpm * 1000))
  const minutes = [1, 10, 100, 1000].find((m) => (thousandths * m) % 1000 === 0)!
  return {
    anchors: [
      // No negative zero, which JSON does not know.
      [0, firstBeat + 0],
      [(thousandths * minutes) / 1000, firstBeat + 60 * minutes],
    ],
    beatsPerBar,
  }
}

/**
 * A grid with other odd beats: every beat stays where it is heard, and what comes after them is counted anew. Anchors go
 * with their beats. One whose beat is over has no count any more, and the counts around it stand in for it; of a grid
 * of constant tempo, which has two, the second one moves on along its line.
 */
export function withOdd(grid: BeatGrid, odd: readonly OddPlace[]): BeatGrid {
  const { odd: before, ...rest } = grid
  const next = odd.length > 0 ? odd.map(([count, beats]): OddPlace => [count, beats]) : undefined
  const numbered = (anchors: BeatGrid['anchors']) =>
    anchors.map(([count, second]) => ({ at: countOfBeat(next, beatAt(before, count)), second }))
  const tenfold = ([first, second]: BeatGrid['anchors']): BeatGrid['anchors'] => [
    first!,
    [
      countOfBeat(before, 10 * beatAt(before, second![0]) - 9 * beatAt(before, first![0])),
      Number((10 * second![1] - 9 * first![1]).toFixed(6)),
    ],
  ]
  const isLost = ({ at }: { at: Counts }) => !Number.isInteger(at)
  const steady = rest.anchors.length === 2 && isLost(numbered(rest.anchors)[1]!)
  const placed = numbered(steady ? tenfold(rest.anchors) : rest.anchors)
  const heardAt = (count: Counts): Seconds => Number(secondAt(grid, countOfBeat(before, beatAt(next, count))).toFixed(6))
  const anchors = new Map<Counts, Seconds>()
  for (const { at, second } of placed) {
    if (Number.isInteger(at)) anchors.set(at, second)
    else for (const count of [Math.floor(at), Math.ceil(at), Math.ceil(at) + 1]) anchors.set(count, anchors.get(count) ?? heardAt(count))
  }
  return { ...rest, anchors: [...anchors].sort((a, b) => a[0] - b[0]), ...(next && { odd: next }) }
}

/** Whether the tempo holds: stretches of eight counts and more differ by at most a hundredth in the time of a count. */
export function holdsTempo({ anchors }: BeatGrid): boolean {
  let from = anchors[0]!
  let slowest = 0
  let fastest = Number.POSITIVE_INFINITY
  for (const to of anchors) {
    if (to[0] - from[0] < EIGHT) continue
    const period = (to[1] - from[1]) / (to[0] - from[0])
    slowest = Math.max(slowest, period)
    fastest = Math.min(fastest, period)
    from = to
  }
  return slowest <= fastest * 1.01
}

/** Counts in the unit people count by: eight, or six in three and in six; eight where there is no grid. */
export function eightOf(grid: Pick<BeatGrid, 'beatsPerBar'> | undefined): Counts {
  return grid === undefined || grid.beatsPerBar === 4 ? EIGHT : 6
}

/** Lengths are kept to a hundredth of a second: a song cut to the length of its counts must not lose its last eight to that. */
const HUNDREDTH_ROUNDING: Seconds = 0.006
/** A length somebody states is in whole seconds, so the song may be half a second longer. */
const SECOND_ROUNDING: Seconds = 0.5

/**
 * Where on its counts a song ends, as a fraction: what its length allows, exact to a hundredth, and with it an eight that
 * ends within the rounding of a length in whole seconds. 3:09 at 132 a minute holds 52 eights, which last 189.09 s. A length
 * read in the song's own file, which has a fingerprint, is exact also where it happens to be whole.
 */
export function lastCountOf({ lengthSeconds, fingerprint }: Pick<Song, 'lengthSeconds' | 'fingerprint'>, grid: BeatGrid): Counts {
  const exact = countAt(grid, lengthSeconds + HUNDREDTH_ROUNDING)
  if (!Number.isInteger(lengthSeconds) || fingerprint !== undefined) return exact
  const eight = eightOf(grid)
  return Math.max(exact, Math.floor(countAt(grid, lengthSeconds + SECOND_ROUNDING) / eight) * eight)
}

/** Counts a section's song offers between its in- and out-point: to the end of its last whole eight unless an out-point is given. */
export function countsOf(section: Section): Counts | null {
  const song = section.song
  if (!song?.grid) return null
  const from = section.inCount ?? 0
  if (section.outCount !== undefined) return Math.max(0, section.outCount - from)
  const eight = eightOf(song.grid)
  return Math.max(0, Math.floor((lastCountOf(song, song.grid) - from) / eight) * eight)
}
