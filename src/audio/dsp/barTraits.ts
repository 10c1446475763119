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
  return {
    low: standard(heard(onsets.low, beats)),
    mid: standard(heard(onsets.mid, beats)),
    high: standard(heard(onsets.high, beats)),
    chord: standard(Float64Array.from(beats, (second) => valueAt(harmony.change, second * harmony.rate))),
    thirds: Math.min(...thirds) / (meanOf(heard(curve, beats)) + 1e-9),
  }
}

/**
 * What speaks for and against a bar: how kick, snare, cymbal and chords fall on its first, second, third and last
 * beat, and how alike the song is one bar on against one beat more or less.
 */
export function barTraits({ low, mid, high, chord, thirds }: Accents, { bar, one }: BarGuess): number[] {
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
