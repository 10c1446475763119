import { accentsOn, type BarGuess, barGuesses, barTraits } from './barTraits.ts'
import { BAR_WEIGHTS } from './barWeights.ts'
import type { Heard } from './heard.ts'
import { choose, scoreOf } from './scoreOf.ts'

/** The bar that beats, in seconds, most likely make, and its odds against all others, 0 to 1. */
export function chooseBar(heard: Heard, beats: readonly number[]): BarGuess & { odds: number } {
  const accents = accentsOn(heard, beats)
  const { best, odds } = choose(
    barGuesses(),
    (guess) => scoreOf(barTraits(accents, guess), BAR_WEIGHTS),
    (a, b) => a === b,
  )
  return { ...best, odds }
}
