import type { Rhythm } from './rhythm.ts'
import { valueAt } from './valueAt.ts'

/** Slowest and fastest beat looked for, beats a minute. */
const SLOWEST = 48
const FASTEST = 215

/** Steps of the search, each this much faster than the one before. */
const STEP = 1.004
/** How many of the best periods are followed up, each with its relatives. */
const BEST = 5
const RELATIVES = [1, 2, 1 / 2, 3, 1 / 3, 3 / 2, 2 / 3]
/** Two periods nearer than this are one. */
const SAME = 0.025

/**
 * Periods, in frames, that a song's beat may have: the best of likeness at a period and its multiples times the
 * spectrum at its frequency and harmonics, then their halves, doubles, thirds. Each is as exact as the whole
 * song's spectrum can tell.
 */
export function candidatePeriods(rhythm: Rhythm): number[] {
  const scored: { period: number; score: number }[] = []
  for (let bpm = SLOWEST / 2; bpm <= FASTEST * 2; bpm *= STEP) {
    const period = (60 * rhythm.rate) / bpm
    scored.push({ period, score: strengthOf(rhythm, period) })
  }
  const peaks = scored.filter(({ score }, i) => score > 0 && score >= (scored[i - 1]?.score ?? 0) && score > (scored[i + 1]?.score ?? 0))
  peaks.sort((a, b) => b.score - a.score)
  const found: number[] = []
  for (const { period } of peaks.slice(0, BEST)) {
    for (const relative of RELATIVES) {
      const wanted = period / relative
      const bpm = (60 * rhythm.rate) / wanted
      if (bpm < SLOWEST || bpm > FASTEST || found.some((one) => Math.abs(one / wanted - 1) < SAME)) continue
      found.push(exactPeriod(rhythm, wanted))
    }
  }
  return found
}

/** How strongly a period in frames is kept: mean likeness at up to four of its multiples, times its harmonics in the spectrum. */
export function strengthOf({ rate, likeness, spectrum, perHertz }: Rhythm, period: number): number {
  let alike = 0
  let multiples = 0
  for (let k = 1; k <= 4 && k * period < likeness.length - 1; k++) {
    alike += valueAt(likeness, k * period)
    multiples++
  }
  let harmonics = 0
  for (let h = 1; h <= 4; h++) harmonics += nearBin(spectrum, (h * rate * perHertz) / period, 0.002) / 4
  return Math.max(0, alike / Math.max(1, multiples)) * harmonics
}

/** The period near this one whose harmonics stand highest in the spectrum. */
function exactPeriod({ rate, spectrum, perHertz }: Rhythm, period: number): number {
  const bin = (rate * perHertz) / period
  const reach = 0.012
  let best = period
  let height = -1
  for (let shift = -reach; shift <= reach; shift += 0.1 / (4 * bin)) {
    let sum = 0
    for (const h of [1, 2, 4]) sum += valueAt(spectrum, h * bin * (1 + shift))
    if (sum > height) {
      height = sum
      best = period / (1 + shift)
    }
  }
  return best
}

function nearBin(spectrum: Float64Array, bin: number, tolerance: number): number {
  const reach = Math.max(1, bin * tolerance)
  let peak = 0
  for (let k = Math.max(0, Math.round(bin - reach)); k <= Math.min(spectrum.length - 1, Math.round(bin + reach)); k++) {
    peak = Math.max(peak, spectrum[k]!)
  }
  return peak
}
