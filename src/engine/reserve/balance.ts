import { areaUnder, cutAt, isConstant, type Quadratic, quadraticAt, startingAt } from '#engine/demand/quadratic.ts'
import { bisect } from '#engine/response/relaxation.ts'
import type { Seconds, Watts } from '#units/units.ts'

/**
 * What is left of the work capacity above critical power (W′), in joules, over a stretch in
 * which power stays on one side of it.
 *
 * Differential form: above critical power it falls by P − CP; below, what is missing fades
 * with the rate (CP − P) ÷ W′; at P = CP it stays. For a power that is a polynomial in time
 * both are closed forms. The balance is not cut at zero: a plan may ask for more than there
 * is, and the model says by how much.
 *
 * Source: Skiba PF, Fulford J, Clarke DC, Vanhatalo A, Jones AM, Eur J Appl Physiol
 * 2015;115(4):703-713.
 */
export interface BalancePiece {
  from: Seconds
  to: Seconds
  /** Balance at `from`, joules. */
  start: number
  /** Power less critical power, time counted from `from`. */
  excess: Quadratic
  drains: boolean
}

/** The balance at a moment of the piece. */
export function balanceAt({ from, start, excess, drains }: BalancePiece, wPrime: number, at: Seconds): number {
  const work = areaUnder(excess, at - from)
  return drains ? start - work : wPrime - (wPrime - start) * Math.exp(work / wPrime)
}

/** One span of power, as one piece, or several where it crosses critical power. */
export function balancePieces(
  watts: Quadratic,
  from: Seconds,
  to: Seconds,
  start: number,
  criticalPower: Watts,
  wPrime: number,
): BalancePiece[] {
  if (isConstant(watts)) {
    const above = watts[0] - criticalPower
    return [{ from, to, start, excess: [above, 0, 0], drains: above >= 0 }]
  }
  const excess: Quadratic = [watts[0] - criticalPower, watts[1], watts[2]]
  const cuts = cutAt(excess, [0], to - from)
  let value = start
  return cuts.slice(1).map((end, i) => {
    const begin = cuts[i]!
    const piece: BalancePiece = {
      from: from + begin,
      to: i === cuts.length - 2 ? to : from + end,
      start: value,
      excess: startingAt(excess, begin),
      drains: quadraticAt(excess, (begin + end) / 2) >= 0,
    }
    value = balanceAt(piece, wPrime, piece.to)
    return piece
  })
}

/** When a draining piece reaches a level it starts above; null where it does not. */
export function drainsTo(piece: BalancePiece, wPrime: number, level: number): Seconds | null {
  const { from, to, start, excess, drains } = piece
  if (!drains || start <= level || balanceAt(piece, wPrime, to) > level) return null
  const [a, b, c] = excess
  const work = start - level
  if (b === 0 && c === 0) return from + work / a
  return from + bisect((t) => areaUnder(excess, t) - work, 0, to - from)
}
