import { BASS_NOTES, likeness, PITCHES } from './harmony.ts'
import type { Heard } from './heard.ts'
import { peakNear, valueAt } from './valueAt.ts'

/** Onsets this near to a beat belong to it; seconds. */
const NEAR = 0.04

/** What is heard at each beat of a grid: one curve for each thing, as deviations from the song's mean. */
export interface Accents {
  curves: readonly Float64Array[]
  /** How much a new part of the song seems to begin at each beat. */
  edges: Float64Array
  /** How present thirds of a beat are, against the beat; a sign of six eighths. */
  thirds: number
}

/** Accents on some beats, seconds, rising. */
export function accentsOn({ onsets, curve, harmony }: Heard, beats: readonly number[]): Accents {
  const { rate } = onsets
  const between = (part: number) => beats.map((second, i) => second + part * ((beats[i + 1] ?? second) - second))
  const heard = (of: Float32Array, seconds: readonly number[]) =>
    Float64Array.from(seconds, (second) => peakNear(of, second * rate, NEAR * rate))
  const halves = between(0.5)
  const levels = beatMeans(onsets.levels, onsets.bands, rate, beats)
  const chroma = beatMeans(harmony.chroma, PITCHES, harmony.rate, beats)
  const bass = beatMeans(harmony.bass, BASS_NOTES, harmony.rate, beats)
  const high = heard(onsets.high, beats)
  const loud = levels.map((row) => meanOf(row))
  const edges = [4, 8, 16].map((aside) => novelty(levels, aside, apart))
  const chordEdges = [4, 8].map((aside) => novelty(chroma, aside, unlike))
  const curves = [
    heard(onsets.low, beats),
    heard(onsets.mid, beats),
    high,
    heard(onsets.low, halves),
    heard(onsets.mid, halves),
    heard(onsets.high, halves),
    Float64Array.from(beats, (second) => valueAt(harmony.change, second * harmony.rate)),
    novelty(chroma, 1, unlike),
    novelty(chroma, 2, unlike),
    novelty(chroma, 4, unlike),
    novelty(bass, 1, unlike),
    novelty(bass, 2, unlike),
    novelty(bass, 4, unlike),
    Float64Array.from(loud),
    Float64Array.from(levels, (row) => (row[0]! + row[1]! + row[2]! + row[3]!) / 4),
  ].map((curve) => standard(curve))
  const tall = [...edges, ...chordEdges].map((edge) => standard(peaksOnly(standard(edge), 4), 6))
  const crash = standard(standard(high).map((value) => Math.max(0, value - 1.5)))
  const thirds = [meanOf(heard(curve, between(1 / 3))), meanOf(heard(curve, between(2 / 3)))]
  return {
    curves: [...curves, crash, ...tall],
    edges: standard(
      tall[0]!.map((_, k) => tall.reduce((sum, edge) => sum + edge[k]!, 0) + crash[k]!),
      6,
    ),
    thirds: Math.min(...thirds) / (meanOf(heard(curve, beats)) + 1e-9),
  }
}

/** The mean of each frame's `width` values from each beat to the next. */
function beatMeans(values: Float32Array, width: number, rate: number, beats: readonly number[]): Float64Array[] {
  const frames = values.length / width
  return beats.map((second, k) => {
    const next = beats[k + 1] ?? second + (second - (beats[k - 1] ?? second))
    const from = Math.max(0, Math.min(frames - 1, Math.round(second * rate)))
    const to = Math.max(from + 1, Math.min(frames, Math.round(next * rate)))
    const mean = new Float64Array(width)
    for (let frame = from; frame < to; frame++) for (let i = 0; i < width; i++) mean[i]! += values[frame * width + i]! / (to - from)
    return mean
  })
}

/** How different the means of the rows before and from each row on are, over `aside` rows to each side; 0 near the ends. */
function novelty(rows: readonly Float64Array[], aside: number, differ: (a: Float64Array, b: Float64Array) => number): Float64Array {
  const width = rows[0]?.length ?? 0
  const before = new Float64Array(width)
  const after = new Float64Array(width)
  const out = new Float64Array(rows.length)
  for (let k = aside; k + aside <= rows.length; k++) {
    before.fill(0)
    after.fill(0)
    for (let j = 0; j < aside; j++) {
      for (let i = 0; i < width; i++) {
        before[i]! += rows[k - 1 - j]![i]! / aside
        after[i]! += rows[k + j]![i]! / aside
      }
    }
    out[k] = differ(before, after)
  }
  return out
}

const unlike = (a: Float64Array, b: Float64Array): number => 1 - likeness(a, b)
const apart = (a: Float64Array, b: Float64Array): number => a.reduce((sum, value, i) => sum + Math.abs(value - b[i]!), 0)

/** What stands no lower than anything within `reach`; 0 elsewhere, squared. */
function peaksOnly(values: Float64Array, reach: number): Float64Array {
  return values.map((value, k) => {
    for (let j = Math.max(0, k - reach); j <= k + reach && j < values.length; j++) if (values[j]! > value) return 0
    return Math.max(0, value) ** 2
  })
}

const meanOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length)

/** Deviations from the mean, none farther than `farthest`. */
function standard(values: Float64Array, farthest = 2.5): Float64Array {
  const mean = meanOf(values)
  const deviation = Math.sqrt(meanOf(values.map((value) => (value - mean) ** 2))) + 1e-9
  return values.map((value) => Math.max(-farthest, Math.min(farthest, (value - mean) / deviation)))
}
