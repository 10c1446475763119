import type { Accents } from './accents.ts'
import { meanAt } from './meanAt.ts'

/** Beats of an eight. */
export const EIGHT = 8

/** The beats that may start an eight, given one that starts a bar: every bar of the first eight beats. None for a bar that eights do not hold. */
export const eightGuesses = (one: number, bar: number): number[] =>
  EIGHT % bar === 0 ? Array.from({ length: EIGHT / bar }, (_, n) => (one + n * bar) % EIGHT) : []

/**
 * What speaks for eights that start at a beat: how its bar differs from the other bars, as parts of a song begin there,
 * and how the beats before it do, where fills lead over.
 */
export function eightTraits({ curves, edges }: Accents, bar: number, first: number): number[] {
  const placed = curves.flatMap((of) => {
    const apart = (beat: number) => meanAt(of, first + beat, EIGHT) - meanAt(of, first + beat, bar)
    return [apart(0), apart(EIGHT - 1), apart(EIGHT - 2)]
  })
  return [...placed, ...phrases(edges, first)]
}

/** How much the parts of a song begin on an eight, and on every second and fourth of them at best. */
function phrases(edges: Float64Array, first: number): number[] {
  return [1, 2, 4].map((eights) => Math.max(...Array.from({ length: eights }, (_, n) => meanAt(edges, first + n * EIGHT, eights * EIGHT))))
}
