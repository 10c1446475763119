import type { PowerStep } from '#engine/reserve/integralForm.ts'
import { integralTau, meanBelow } from '#engine/reserve/integralForm.ts'

/** The models of the engine, stepped second by second: a yardstick, never used by the engine. */

const eachSecond = (steps: readonly PowerStep[]) => steps.flatMap(([watts, seconds]) => Array<number>(seconds).fill(watts))

const atStepEnds = (steps: readonly PowerStep[], values: readonly number[]): number[] => {
  let end = 0
  return steps.map(([, seconds]) => {
    end += seconds
    return values[end - 1]!
  })
}

/** Differential form, one-second Euler steps. */
export function eulerBalance(steps: readonly PowerStep[], criticalPower: number, wPrime: number): number[] {
  let balance = wPrime
  const values = eachSecond(steps).map((watts) => {
    balance += watts >= criticalPower ? criticalPower - watts : (1 - balance / wPrime) * (criticalPower - watts)
    return balance
  })
  return atStepEnds(steps, values)
}

/** Integral form, one-second sums, the newest second undecayed. */
export function summedBalance(steps: readonly PowerStep[], criticalPower: number, wPrime: number): number[] {
  const fade = Math.exp(-1 / integralTau(meanBelow(steps, criticalPower)))
  let spent = 0
  const values = eachSecond(steps).map((watts) => {
    spent = spent * fade + Math.max(0, watts - criticalPower)
    return wPrime - spent
  })
  return atStepEnds(steps, values)
}
