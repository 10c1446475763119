/**
 * A small network's fitted numbers: each trait as deviations from the mean of the material it was fitted to, added up
 * directly and through a layer of hidden units (tanh).
 */
export interface Weights {
  means: readonly number[]
  deviations: readonly number[]
  direct: readonly number[]
  hidden: readonly (readonly number[])[]
  bias: readonly number[]
  out: readonly number[]
}

/** No trait says more than this many deviations do. */
const FARTHEST = 3

/**
 * How much a guess's traits speak for it, as log odds against the other guesses for the same song: a conditional
 * logit (McFadden 1974) with one hidden layer.
 */
export function scoreOf(traits: readonly number[], { means, deviations, direct, hidden, bias, out }: Weights): number {
  const z = traits.map((trait, i) => Math.max(-FARTHEST, Math.min(FARTHEST, (trait - means[i]!) / deviations[i]!)))
  const dot = (weights: readonly number[]) => weights.reduce((sum, weight, i) => sum + weight * z[i]!, 0)
  return hidden.reduce((sum, weights, h) => sum + out[h]! * Math.tanh(dot(weights) + bias[h]!), dot(direct))
}

/** The guess with the highest score, and its share of the odds, 0 to 1, among those that are `other` than it. */
export function choose<T>(guesses: readonly T[], score: (guess: T) => number, same: (a: T, b: T) => boolean): { best: T; odds: number } {
  const scores = guesses.map(score)
  const top = Math.max(...scores)
  const best = guesses[scores.indexOf(top)]!
  let rest = 0
  for (const [i, guess] of guesses.entries()) if (!same(best, guess)) rest += Math.exp(scores[i]! - top)
  return { best, odds: 1 / (1 + rest) }
}
