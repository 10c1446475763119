/** Constant power for a time. */
export type PowerStep = readonly [watts: number, seconds: number]

/**
 * Time constant of the integral form, from how far the mean power of the recoveries lies
 * below critical power: 546·e^(−0.01·D) + 316 s.
 * Source: Skiba PF, Chidnok W, Vanhatalo A, Jones AM, Med Sci Sports Exerc 2012;44(8):1526-1532.
 */
export const integralTau = (below: number): number => 546 * Math.exp(-0.01 * below) + 316

/** Time-weighted mean of how far the steps below critical power lie below it; 0 where none does. */
export function meanBelow(steps: readonly PowerStep[], criticalPower: number): number {
  const easy = steps.filter(([watts]) => watts < criticalPower)
  const seconds = easy.reduce((sum, [, length]) => sum + length, 0)
  return seconds === 0 ? 0 : easy.reduce((sum, [watts, length]) => sum + (criticalPower - watts) * length, 0) / seconds
}

/**
 * A yardstick for the reserve, the older published form: every joule above critical power is spent at
 * once and comes back with one time constant for the whole session, also during work. Balance
 * in joules at the end of every step, exact for constant power within each.
 * Source: as `integralTau`.
 */
export function integralBalance(steps: readonly PowerStep[], criticalPower: number, wPrime: number): number[] {
  const tau = integralTau(meanBelow(steps, criticalPower))
  let spent = 0
  return steps.map(([watts, seconds]) => {
    const fade = Math.exp(-seconds / tau)
    spent = spent * fade + Math.max(0, watts - criticalPower) * tau * (1 - fade)
    return wPrime - spent
  })
}
