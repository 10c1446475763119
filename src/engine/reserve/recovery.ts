import { areaUnder } from '#engine/demand/quadratic.ts'
import { bisect, crossings, type Relaxation, relaxedAt, relaxTowards, turningPoints } from '#engine/response/relaxation.ts'
import type { Seconds } from '#units/units.ts'
import type { ReserveStretch } from './stretches.ts'

/**
 * How the work capacity above critical power (W′) comes back. Each is published by itself:
 *
 * - `differential`: what is missing fades at (CP − P) ÷ W′ while power is below CP, and above it the reserve falls by
 *   P − CP. Skiba PF et al., Eur J Appl Physiol 2015;115(4):703-713.
 * - `integral`: what was spent fades at one rate throughout, during work too: tau = 546 e^(−0.01 D) + 316 s, D being CP
 *   less the mean of the power below it. Skiba PF et al., Med Sci Sports Exerc 2012;44(8):1526-1532.
 * - `halfTime`: what is missing fades below CP with a measured half-time. Ferguson C et al., J Appl Physiol
 *   2010;108(4):866-874. Measured after exhaustion with hardly any load, so it is generous just below CP.
 *
 * Two-phase recoveries (Caen K et al., Med Sci Sports Exerc 2021; Chorley A et al., Eur J Appl Physiol 2022) are left
 * out: they were measured after exhaustion in people fitter than a class (uptake 54 and 59), and do not say how work
 * draws on the two phases.
 */
export const RECOVERIES = ['differential', 'integral', 'halfTime'] as const
export type Recovery = (typeof RECOVERIES)[number]

/** 234 ± 32 s on a cycle ergometer: 37, 65 and 86 % are back after 2, 6 and 15 min (Ferguson 2010). */
const HALF_TIME: Seconds = 234

/**
 * The balance in joules over a stretch, in closed form. It is not cut at zero: a plan may ask for more than there is, and
 * the model says by how much.
 */
export interface ReservePiece extends ReserveStretch {
  /** Balance at `from`, joules. */
  start: number
  recovery: Recovery
  /** The integral form: joules spent that have not come back. */
  spent?: Relaxation
}

/** A stretch from a balance of `start` joules. */
export function recoveredBy(
  recovery: Recovery,
  { from, to, excess, drains, block }: ReserveStretch,
  start: number,
  wPrime: number,
  tau: Seconds,
): ReservePiece {
  if (recovery !== 'integral') return { from, to, excess, drains, block, start, recovery }
  // ds/dt = max(0, P − CP) − s ÷ tau
  const target = drains ? ([tau * excess[0], tau * excess[1], tau * excess[2]] as const) : NOTHING
  return { from, to, excess, drains, block, start, recovery, spent: relaxTowards(target, wPrime - start, from, to, tau) }
}

const NOTHING = [0, 0, 0] as const

/** The balance at a moment of a piece, joules. */
export function balanceAt(piece: ReservePiece, wPrime: number, at: Seconds): number {
  const { from, start, excess, drains, recovery, spent } = piece
  if (spent !== undefined) return wPrime - relaxedAt(spent, at)
  if (drains) return start - areaUnder(excess, at - from)
  if (recovery === 'halfTime') return wPrime - (wPrime - start) * 2 ** ((from - at) / HALF_TIME)
  return wPrime - (wPrime - start) * Math.exp(areaUnder(excess, at - from) / wPrime)
}

/** When a draining piece that starts above nothing reaches it; null where it does not. */
export function runsOutIn(piece: ReservePiece, wPrime: number): Seconds | null {
  const { from, to, start, excess, spent } = piece
  if (start <= 0) return null
  if (spent !== undefined) return crossings(spent, wPrime)[0] ?? null
  if (balanceAt(piece, wPrime, to) > 0) return null
  const [a, b, c] = excess
  if (b === 0 && c === 0) return from + start / a
  return from + bisect((t) => areaUnder(excess, t) - start, 0, to - from)
}

/** Where a piece of the integral form may be lowest inside: what comes back can win over what is spent. */
export const turnsIn = ({ spent }: ReservePiece): readonly Seconds[] => (spent === undefined ? NEVER : turningPoints(spent))

const NEVER: readonly Seconds[] = []

/** Time constant of the integral form over a whole ride, seconds. */
export function integralTau(stretches: readonly ReserveStretch[]): Seconds {
  let seconds = 0
  let missing = 0
  for (const { from, to, excess, drains } of stretches) {
    if (drains) continue
    seconds += to - from
    missing -= areaUnder(excess, to - from)
  }
  return 546 * Math.exp(seconds > 0 ? (-0.01 * missing) / seconds : 0) + 316
}
