import type { Accents } from './accents.ts'
import { meanAt } from './meanAt.ts'

/** Beats of a bar as it is felt: three, four, or the two of six eighths. */
const BARS = [4, 3, 2] as const
type Bar = (typeof BARS)[number]

/** Which beats are ones: every `bar`-th from beat `one` of the grid. */
export interface BarGuess {
  bar: Bar
  one: number
}

/** Every bar there can be. */
export const barGuesses = (): BarGuess[] => BARS.flatMap((bar) => Array.from({ length: bar }, (_, one) => ({ bar, one })))

/**
 * What speaks for and against a bar: how what is heard falls on its first, second, third and last beat, and how alike
 * the song is one bar on against one beat more or less.
 */
export function barTraits({ curves, edges, thirds }: Accents, { bar, one }: BarGuess): number[] {
  const placed = curves.flatMap((of) => {
    const at = (beat: number) => meanAt(of, one + beat, bar)
    const first = at(0)
    return [
      bar === 4 ? first : 0,
      bar === 4 ? at(2) : 0,
      bar === 4 ? at(1) - at(3) : 0,
      bar === 3 ? first : 0,
      bar === 3 ? at(1) - at(2) : 0,
      bar === 2 ? first : 0,
    ]
  })
  const patterned = [0, 1, 2, 7, 9].flatMap((i) =>
    bar === 4 ? patterns([0, 1, 2, 3].map((beat) => meanAt(curves[i]!, one + beat, 4))) : [0, 0, 0, 0],
  )
  const alike = curves.slice(0, 11).map((of) => {
    const three = likeness(of, 3) + likeness(of, 6)
    const four = likeness(of, 4) + likeness(of, 8)
    return bar === 3 ? three - four : bar === 4 ? four - three : 0
  })
  const twos = [0, 6].map((i) => (bar === 2 ? likeness(curves[i]!, 2) - likeness(curves[i]!, 3) : 0))
  return [
    bar === 4 ? 1 : 0,
    bar === 3 ? 1 : 0,
    bar === 2 ? thirds : 0,
    ...placed,
    ...patterned,
    ...alike,
    ...twos,
    ...phrases(edges, one, bar),
  ]
}

/** What stands alone on one, on three, on another, and on two and four together. */
function patterns(means: readonly number[]): number[] {
  const [one, two, three, four] = means as [number, number, number, number]
  const above = (value: number, ...others: number[]) => Math.max(0, value - Math.max(...others))
  return [
    above(one, two, three, four),
    above(three, one, two, four),
    above(two, one, three, four) + above(four, one, two, three),
    above(Math.min(two, four), one, three),
  ]
}

/** How much the parts of a song keep to two and four bars from some of a bar's ones. */
function phrases(edges: Float64Array, one: number, bar: number): number[] {
  return [2, 4, 8].map((bars) => Math.max(...Array.from({ length: bars }, (_, n) => meanAt(edges, one + n * bar, bars * bar))))
}

function likeness(of: Float64Array, lag: number): number {
  let sum = 0
  for (let k = lag; k < of.length; k++) sum += of[k]! * of[k - lag]!
  return sum / Math.max(1, of.length - lag)
}
