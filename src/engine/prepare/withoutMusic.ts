import type { RideReport } from '#engine/report.ts'
import type { Effort, Seconds } from '#units/units.ts'

/** A stretch of the class as it is led by the clock alone. */
export interface PlainStretch {
  from: Seconds
  to: Seconds
  /** Effort of its easier and of its harder blocks, on average. */
  easy: Effort
  hard: Effort
  /** How long each time is for which it goes hard, in order; absent where the two efforts are near each other. */
  bouts?: Seconds[]
}

/** Lines a leader can take in while nothing plays. */
const PLAIN_LINES = 10
/** Shorter than this nobody times by a wall clock. */
const SHORTEST: Seconds = 60
/** No stretch is longer than so many times its even share: a line that says little about a quarter of the class is no help. */
const LONGEST_SHARE = 2
/** Efforts this near are ridden as one. */
const ALIKE = 1
/** Absorbs what means of floating numbers lose. */
const DRIFT = 1e-9

interface Bar {
  from: Seconds
  to: Seconds
  effort: Effort
}

/**
 * The class in at most ten stretches of at least a minute, each told by an easy and a hard effort.
 * Of all ways to cut between blocks the one is taken whose stretches, each with its two efforts,
 * lie nearest to the plan in the time-weighted square; among equals the fewest stretches.
 * Exact, by dynamic programming; cost: the square of the number of blocks.
 */
export function withoutMusic({ blocks }: Pick<RideReport, 'blocks'>, lines = PLAIN_LINES): PlainStretch[] {
  const bars = blocks
    .filter(({ from, to }) => to > from)
    .map(({ from, to, block }): Bar => ({ from, to, effort: (block.effort.from + block.effort.to) / 2 }))
  if (bars.length === 0) return []
  return cutsOf(bars, lines).map(([first, last]) => stretchOf(bars.slice(first, last)))
}

interface Best {
  cost: number
  /** First bar of the last stretch. */
  start: number
}

/** Half-open ranges of bars. */
function cutsOf(bars: readonly Bar[], lines: number): [number, number][] {
  const longest = (LONGEST_SHARE * (bars.at(-1)!.to - bars[0]!.from)) / lines
  const costs = bars.map((_, first) => costsFrom(bars, first, longest))
  // best[k][end]: the first `end` bars in exactly k stretches.
  const best: (Best | undefined)[][] = [[{ cost: 0, start: 0 }]]
  for (let k = 1; k <= Math.min(lines, bars.length); k++) {
    best[k] = []
    for (let end = 1; end <= bars.length; end++) {
      for (let start = 0; start < end; start++) {
        const before = best[k - 1]![start]
        const own = costs[start]![end - start - 1]!
        if (before === undefined || own === Number.POSITIVE_INFINITY) continue
        const cost = before.cost + own
        if (best[k]![end] === undefined || cost < best[k]![end]!.cost - 1e-9) best[k]![end] = { cost, start }
      }
    }
  }
  const reached = best.flatMap((row, k) => (row[bars.length] ? [{ k, cost: row[bars.length]!.cost }] : []))
  // A class that no cut into stretches of these lengths fits is one stretch.
  if (reached.length === 0) return [[0, bars.length]]
  let { k } = reached.reduce((least, one) => (one.cost < least.cost - 1e-9 ? one : least))
  const ranges: [number, number][] = []
  for (let end = bars.length; end > 0; k--) {
    const { start } = best[k]![end]!
    ranges.unshift([start, end])
    end = start
  }
  return ranges
}

/** Cost of a stretch from one bar to each later one; infinite where it is too short or, of several bars, too long. */
function costsFrom(bars: readonly Bar[], first: number, longest: Seconds): number[] {
  return bars.slice(first).map((bar, more) => {
    const length = bar.to - bars[first]!.from
    if (length < SHORTEST || (more > 0 && length > Math.max(longest, 2 * SHORTEST))) return Number.POSITIVE_INFINITY
    const run = bars.slice(first, first + more + 1)
    const { easy, hard, line } = levelsOf(run)
    return run.reduce((sum, { from, to, effort }) => sum + (to - from) * (effort - (effort > line ? hard : easy)) ** 2, 0)
  })
}

/** The two efforts a run is told by, and the line between them. */
function levelsOf(run: readonly Bar[]): { easy: Effort; hard: Effort; line: Effort } {
  const efforts = run.map(({ effort }) => effort)
  const line = (Math.min(...efforts) + Math.max(...efforts)) / 2
  const mean = (bars: readonly Bar[]): number => {
    const time = bars.reduce((sum, { from, to }) => sum + to - from, 0)
    return bars.reduce((sum, { from, to, effort }) => sum + (to - from) * effort, 0) / time
  }
  const [low, high] = [run.filter(({ effort }) => effort <= line), run.filter(({ effort }) => effort > line)]
  const easy = mean(low)
  return { easy, hard: high.length > 0 ? mean(high) : easy, line }
}

function stretchOf(run: readonly Bar[]): PlainStretch {
  const { easy, hard, line } = levelsOf(run)
  const [from, to] = [run[0]!.from, run.at(-1)!.to]
  if (hard - easy <= ALIKE + DRIFT) return { from, to, easy, hard }
  return { from, to, easy, hard, bouts: boutsAbove(run, line) }
}

/** Lengths of the unbroken runs above a line. */
function boutsAbove(run: readonly Bar[], line: Effort): Seconds[] {
  const lengths: Seconds[] = []
  let inside = false
  for (const { from, to, effort } of run) {
    const above = effort > line
    if (above && inside) lengths[lengths.length - 1]! += to - from
    else if (above) lengths.push(to - from)
    inside = above
  }
  return lengths
}
