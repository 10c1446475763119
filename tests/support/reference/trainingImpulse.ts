/** Factor and exponent of the exponential weighting; the women's factor from memory. */
const WEIGHTING = { men: [0.64, 1.92], women: [0.86, 1.67] } as const

/**
 * A yardstick; the page shows none. Training impulse: minutes × share of heart-rate reserve × weight, where the weight rises
 * exponentially with the share. Copies that keep 0.64 for women give women less than men at
 * every share, the opposite of what was published.
 * Source: Banister EW in Physiological Testing of Elite Athletes, 1991; Morton RH,
 * Fitz-Clarke JR, Banister EW, J Appl Physiol 1990;69(3):1171-1177.
 */
export function trainingImpulse(minutes: number, share: number, of: keyof typeof WEIGHTING): number {
  const [factor, exponent] = WEIGHTING[of]
  return minutes * share * factor * Math.exp(exponent * share)
}
