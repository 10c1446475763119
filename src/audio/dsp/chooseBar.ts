import { type Accents, accentsOn } from './accents.ts'
import { type BarGuess, barGuesses, barTraits } from './barTraits.ts'
import { BAR_WEIGHTS } from './barWeights.ts'
import { eightGuesses, eightTraits } from './eightTraits.ts'
import { EIGHT_WEIGHTS } from './eightWeights.ts'
import type { Heard } from './heard.ts'
import { choose, scoreOf, type Weights } from './scoreOf.ts'

/** How beats are counted: the beats of a bar, a beat that starts one, and one that starts an eight, or a bar where eights do not fit. */
interface Count extends BarGuess {
  eight: number
  /** The bar's odds against all others, 0 to 1. */
  odds: number
}

export interface CountWeights {
  bar: Weights
  eight: Weights
}

/** The bar and the eight that beats, in seconds, most likely make. */
export function chooseBar(
  heard: Heard,
  beats: readonly number[],
  weights: CountWeights = { bar: BAR_WEIGHTS, eight: EIGHT_WEIGHTS },
): Count {
  const accents = accentsOn(heard, beats)
  const { best, odds } = choose(
    barGuesses(),
    (guess) => scoreOf(barTraits(accents, guess), weights.bar),
    (a, b) => a === b,
  )
  return { ...best, eight: chooseEight(accents, best, weights.eight), odds }
}

function chooseEight(accents: Accents, { bar, one }: BarGuess, weights: Weights): number {
  const guesses = eightGuesses(one, bar)
  if (guesses.length === 0) return one
  return choose(
    guesses,
    (first) => scoreOf(eightTraits(accents, bar, first), weights),
    (a, b) => a === b,
  ).best
}
