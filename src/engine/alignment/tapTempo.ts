import type { Bpm, Seconds } from '#units/units.ts'

/** A tempo as it was tapped, with what is known of its quality. */
export interface TappedTempo {
  /** Unrounded. */
  bpm: Bpm
  /** Half the width of the 95 % interval of the tempo. */
  uncertainty: Bpm
  /** The time of a beat on the taps' own clock, and from one beat to the next. */
  beat: Seconds
  period: Seconds
  /** Scatter of the taps used around the beat (standard deviation). */
  jitter: Seconds
  /** Taps used; taps left out as doubled or stray; beats nobody tapped between the first and the last. */
  used: number
  leftOut: number
  missed: number
}

/** Fewest taps a tempo can be told from, with what they leave to judge them by. */
export const FEWEST_TAPS = 5

/** Tempos that are looked for. */
export const TAPPED: Readonly<{ from: Bpm; to: Bpm }> = { from: 30, to: 300 }
const PERIODS: Readonly<{ from: Seconds; to: Seconds }> = { from: 60 / TAPPED.to, to: 60 / TAPPED.from }
/** How far a tap may be off its beat, as a share of the period; a third would already be ambiguous. */
const NEAR = 0.3
/** Beats in a row that may go untapped. */
const MOST_MISSED = 8
/** Nobody taps closer than this, so that a clean row of taps does not leave out every tap a hair off (own choice). */
const FINEST: Seconds = 0.012

/** How far a period guessed from single gaps may be off: over a long row of missed beats each gives another number of them (own choice). */
const GUESSES = [1, 0.97, 1.03, 0.94, 1.06, 0.91, 1.09]

/**
 * The tempo of a row of taps, proof against doubled, stray and missed ones. A period is chosen that
 * explains most gaps between taps as one beat or a few; taps are numbered along it; the median of
 * all slopes (Theil–Sen) and of the offsets gives a line no stray tap can turn. Where periods close
 * by would number the taps otherwise, the line most taps lie on is taken. Taps far off it are left
 * out, and least squares through the others gives the tempo and its standard error, widened by
 * Student's factor. Null for fewer than five usable taps or an unsteady row.
 *
 * @param taps seconds on any clock, rising
 */
export function tapTempo(taps: readonly Seconds[]): TappedTempo | null {
  const times = taps.filter((time, i) => i === 0 || time > taps[i - 1]!)
  if (times.length < FEWEST_TAPS) return null
  const first = likelyPeriod(times)
  if (first === null) return null
  const lines = numberings(times, first).flatMap((numbered) => lineThrough(times, numbered) ?? [])
  const line = lines.sort((a, b) => strayed(times, a) - strayed(times, b))[0]
  if (!line) return null
  const numbered = oneABeat(times, line)
  const limit = Math.min(NEAR * line.period, Math.max(FINEST * 2, 3 * 1.4826 * median(numbered.map((tap) => Math.abs(offLine(tap, line))))))
  const kept = numbered.filter((tap) => Math.abs(offLine(tap, line)) <= limit)
  if (kept.length < FEWEST_TAPS || kept.length < taps.length / 2) return null
  return leastSquares(kept, taps.length)
}

interface Tap {
  beat: number
  time: Seconds
}

interface Line {
  period: Seconds
  beat: Seconds
}

const offLine = ({ beat, time }: Tap, line: Line): Seconds => time - line.beat - beat * line.period

/** The gap that explains the others best: each as one beat, as a few (at a price), as a double tap, or not at all. */
function likelyPeriod(times: readonly Seconds[]): Seconds | null {
  const gaps = times.slice(1).map((time, i) => time - times[i]!)
  const candidates = gaps.filter((gap) => gap >= PERIODS.from * (1 - NEAR) && gap <= PERIODS.to)
  if (candidates.length === 0) return null
  const cost = (period: Seconds) => gaps.reduce((sum, gap) => sum + Math.min(UNEXPLAINED, costOf(gap, period)), 0)
  const best = candidates.map((period) => ({ period, cost: cost(period) })).sort((a, b) => a.cost - b.cost)[0]!.period
  const near = gaps.filter((gap) => Math.abs(gap - best) <= 0.2 * best)
  const period = near.length > 0 ? median(near) : best
  return period < PERIODS.from * 0.99 || period > PERIODS.to * 1.01 ? null : period
}

const UNEXPLAINED = 0.5

function costOf(gap: Seconds, period: Seconds): number {
  const beats = Math.round(gap / period)
  if (beats > MOST_MISSED) return UNEXPLAINED
  if (beats === 0) return 0.4
  return Math.abs(gap / period - beats) + 0.12 * (beats - 1)
}

/** The ways to number taps along a guessed period and others close to it. */
function numberings(times: readonly Seconds[], guess: Seconds): Tap[][] {
  const ways = GUESSES.map((factor) => longestChain(times, guess * factor))
  const said = ways.map((chain) => chain.map(({ beat, time }) => `${beat} ${time}`).join())
  return ways.filter((_, i) => said.indexOf(said[i]!) === i)
}

/** The line through numbered taps, found anew as the taps near it are; null where too few are. */
function lineThrough(times: readonly Seconds[], chain: readonly Tap[]): Line | null {
  let numbered = chain
  let line: Line | null = null
  for (let round = 0; round < 3; round++) {
    if (numbered.length < FEWEST_TAPS) return null
    line = theilSen(numbered)
    numbered = oneABeat(times, line)
  }
  return line
}

/** How badly taps lie on a line: each by its distance from the nearest beat, where from an eighth of a period on it is just off. */
function strayed(times: readonly Seconds[], line: Line): number {
  return times.reduce((sum, time) => {
    const beats = (time - line.beat) / line.period
    return sum + Math.min(1, ((beats - Math.round(beats)) * 8) ** 2)
  }, 0)
}

/** Taps numbered one after the other along a period, from whichever of the first taps explains the most. */
function longestChain(times: readonly Seconds[], period: Seconds): Tap[] {
  let best: Tap[] = []
  for (let start = 0; start < Math.min(times.length, 6); start++) {
    const chain = chainFrom(times, start, period)
    if (chain.length > best.length) best = chain
  }
  return best
}

function chainFrom(times: readonly Seconds[], start: number, period: Seconds): Tap[] {
  const chain: Tap[] = [{ beat: 0, time: times[start]! }]
  for (const time of times.slice(start + 1)) {
    const last = chain.at(-1)!
    const beats = (time - last.time) / period
    const whole = Math.round(beats)
    if (whole >= 1 && Math.abs(beats - whole) <= NEAR) chain.push({ beat: last.beat + whole, time })
  }
  return chain
}

/** For every beat of a line the tap nearest to it, if one is near. */
function oneABeat(times: readonly Seconds[], line: Line): Tap[] {
  const nearest = new Map<number, Tap>()
  for (const time of times) {
    const tap = { beat: Math.round((time - line.beat) / line.period), time }
    const other = nearest.get(tap.beat)
    const off = Math.abs(offLine(tap, line))
    if (off <= NEAR * line.period && (other === undefined || off < Math.abs(offLine(other, line)))) nearest.set(tap.beat, tap)
  }
  return [...nearest.values()].sort((a, b) => a.beat - b.beat)
}

/** Pairs further apart say more of the slope than they cost; with more taps than this only every other few are paired. */
const MOST_PAIRED = 160

function theilSen(taps: readonly Tap[]): Line {
  const step = Math.ceil(taps.length / MOST_PAIRED)
  const some = taps.filter((_, i) => i % step === 0)
  const slopes: number[] = []
  for (const [i, a] of some.entries()) {
    for (const b of some.slice(i + 1)) if (b.beat > a.beat) slopes.push((b.time - a.time) / (b.beat - a.beat))
  }
  const period = median(slopes)
  return { period, beat: median(taps.map(({ beat, time }) => time - beat * period)) }
}

function leastSquares(taps: readonly Tap[], made: number): TappedTempo | null {
  const n = taps.length
  const meanBeat = taps.reduce((sum, { beat }) => sum + beat, 0) / n
  const meanTime = taps.reduce((sum, { time }) => sum + time, 0) / n
  const spread = taps.reduce((sum, { beat }) => sum + (beat - meanBeat) ** 2, 0)
  const period = taps.reduce((sum, { beat, time }) => sum + (beat - meanBeat) * (time - meanTime), 0) / spread
  const line = { period, beat: meanTime - meanBeat * period }
  const squares = taps.reduce((sum, tap) => sum + offLine(tap, line) ** 2, 0)
  const free = n - 2
  const jitter = Math.sqrt(squares / free)
  const bpm = 60 / period
  return {
    bpm,
    uncertainty: (student(free) * jitter * bpm) / Math.sqrt(spread) / period,
    beat: line.beat,
    period,
    jitter,
    used: n,
    leftOut: made - n,
    missed: taps.at(-1)!.beat - taps[0]!.beat + 1 - n,
  }
}

/** Student's factor of the two-sided 95 % interval, to one in a hundred from four degrees of freedom on (own fit to the published table). */
const student = (free: number): number => 1.96 + 2.37 / free + 2.82 / free ** 2 + (free < 4 ? 0.15 : 0)

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}
