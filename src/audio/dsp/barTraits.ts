import type { Heard } from './heard.ts'
import { peakNear, valueAt } from './valueAt.ts'

/** Beats of a bar as it is felt: three, four, or the two of six eighths. */
export const BARS = [4, 3, 2] as const
export type Bar = (typeof BARS)[number]

/** Which beats are ones: every `bar`-th from beat `one` of the grid. */
export interface BarGuess {
  bar: Bar
  one: number
}

/** Onsets this near to a beat belong to it; seconds. */
const NEAR = 0.04

/** Every bar there can be. */
export const barGuesses = (): BarGuess[] => BARS.flatMap((bar) => Array.from({ length: bar }, (_, one) => ({ bar, one })))

/** What is heard on each beat of a grid, each as deviations from the song's mean. */
export interface Accents {
  low: Float64Array
  mid: Float64Array
  high: Float64Array
  chord: Float64Array
  /** Where what is heard over eight beats changes most: parts of a song begin on ones. */
  edge: Float64Array
  /** The loudest cymbals: a crash marks a one. */
  crash: Float64Array
  /** How present thirds of a beat are, against the beat; a sign of six eighths. */
  thirds: number
}

/** Accents on some beats, seconds, rising. */
export function accentsOn({ onsets, curve, harmony }: Heard, beats: readonly number[]): Accents {
  const { rate } = onsets
  const heard = (of: Float32Array, seconds: readonly number[]) =>
    Float64Array.from(seconds, (second) => peakNear(of, second * rate, NEAR * rate))
  const after = (part: number) => beats.slice(1).map((second, i) => beats[i]! + part * (second - beats[i]!))
  const thirds = [meanOf(heard(curve, after(1 / 3))), meanOf(heard(curve, after(2 / 3)))]
  const low = standard(heard(onsets.low, beats))
  const mid = standard(heard(onsets.mid, beats))
  const high = standard(heard(onsets.high, beats))
  return {
    low,
    mid,
    high,
    chord: standard(Float64Array.from(beats, (second) => valueAt(harmony.change, second * harmony.rate))),
    edge: edgesOf([low, mid, high]),
    crash: standard(high.map((value) => Math.max(0, value - 1.5))),
    thirds: Math.min(...thirds) / (meanOf(heard(curve, beats)) + 1e-9),
  }
}

/** Beats to both sides of a place in a song that are compared to find where its parts begin. */
const ASIDE = 8

/** How much the means of some accents change at each beat, kept only where no beat near has more. */
function edgesOf(parts: readonly Float64Array[]): Float64Array {
  const change = parts[0]!.map((_, k) =>
    parts.reduce((sum, of) => {
      const before = of.subarray(Math.max(0, k - ASIDE), k)
      const after = of.subarray(k, k + ASIDE)
      return before.length < ASIDE || after.length < ASIDE ? sum : sum + Math.abs(meanOf(after) - meanOf(before))
    }, 0),
  )
  const peaks = change.map((value, k) => (value >= Math.max(...change.subarray(Math.max(0, k - ASIDE), k + ASIDE + 1)) ? value ** 2 : 0))
  const mean = meanOf(peaks) + 1e-9
  return peaks.map((value) => value / mean - 1)
}

/**
 * What speaks for and against a bar: how kick, snare, cymbal and chords fall on its first, second, third and last
 * beat, and how alike the song is one bar on against one beat more or less.
 */
export function barTraits({ low, mid, high, chord, edge, crash, thirds }: Accents, { bar, one }: BarGuess): number[] {
  const at = (of: Float64Array, beat: number) => {
    let sum = 0
    let n = 0
    for (let k = (one + beat) % bar; k < of.length; k += bar, n++) sum += of[k]!
    return n === 0 ? 0 : sum / n
  }
  const isFour = bar === 4 ? 1 : 0
  const middle = (of: Float64Array) => (bar === 4 ? at(of, 2) : 0)
  const others = (of: Float64Array) => (bar === 4 ? (at(of, 1) + at(of, 3)) / 2 : at(of, 1))
  const parts = [low, mid, high, chord]
  const forBar = (value: number) => [bar === 4 ? value : 0, bar === 3 ? value : 0, bar === 2 ? value : 0]
  return [
    isFour,
    bar === 3 ? 1 : 0,
    bar === 2 ? thirds : 0,
    ...parts.flatMap((of) => forBar(at(of, 0))),
    ...parts.map(middle),
    ...parts.map((of) => (bar === 3 ? 0 : others(of))),
    ...parts.map((of) => (bar === 4 ? at(of, 3) : 0)),
    ...parts.map((of) => (bar === 3 ? at(of, 1) - at(of, 2) : 0)),
    ...parts.map((of) => {
      const three = likeness(of, 3) + likeness(of, 6)
      const four = likeness(of, 4) + likeness(of, 8)
      return bar === 3 ? three - four : bar === 4 ? four - three : 0
    }),
    ...forBar(at(edge, 0)),
    ...forBar(at(crash, 0)),
    bar === 2 ? likeness(low, 2) - likeness(low, 3) : 0,
  ]
}

function likeness(of: Float64Array, lag: number): number {
  let sum = 0
  for (let k = lag; k < of.length; k++) sum += of[k]! * of[k - lag]!
  return sum / Math.max(1, of.length - lag)
}

const meanOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length)

function standard(values: Float64Array): Float64Array {
  const mean = meanOf(values)
  const deviation = Math.sqrt(meanOf(values.map((value) => (value - mean) ** 2))) + 1e-9
  return values.map((value) => Math.max(-2.5, Math.min(2.5, (value - mean) / deviation)))
}
