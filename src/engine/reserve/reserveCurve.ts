import type { Ridden } from '#engine/demand/ridden.ts'
import { indexAt } from '#engine/response/heartCurve.ts'
import type { Rider } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { type BalancePiece, balanceAt, balancePieces, drainsTo } from './balance.ts'

/** One rider's reserve over the ride: the W′ balance as a share of W′. */
export interface ReserveCurve {
  /** Joules. */
  wPrime: number
  pieces: BalancePiece[]
  /** Lowest share; below 0 where the plan asks for more than there is, which is shown as 0 %. `block`: index into the report's blocks. */
  minimum: { at: Seconds; share: number; block?: number }
  /** Where it first runs out. */
  runsOut?: { at: Seconds; block?: number }
  /** False when the rider never goes above critical power. */
  drawnOn: boolean
}

type Powered = Pick<Ridden, 'from' | 'to' | 'watts'> & Partial<Pick<Ridden, 'block'>>

/** The balance over the whole ride, full at its start unless joules to start with are given; over a gap between spans it stands still. */
export function reserveCurve(
  ridden: readonly Powered[],
  { criticalPower, wPrime }: Pick<Rider, 'criticalPower' | 'wPrime'>,
  start = wPrime,
): ReserveCurve {
  const pieces: BalancePiece[] = []
  let value = start
  let lowest = start
  let lowestAt = ridden[0]?.from ?? 0
  let lowestBlock: number | undefined
  let runsOut: ReserveCurve['runsOut']
  for (const { from, to, watts, block } of ridden) {
    for (const piece of balancePieces(watts, from, to, value, criticalPower, wPrime)) {
      pieces.push(piece)
      value = balanceAt(piece, wPrime, piece.to)
      if (value < lowest) {
        lowest = value
        lowestAt = piece.to
        lowestBlock = block
      }
      if (value <= 0 && runsOut === undefined) {
        const at = drainsTo(piece, wPrime, 0)
        if (at !== null) runsOut = { at, ...(block !== undefined && { block }) }
      }
    }
  }
  const minimum = { at: lowestAt, share: lowest / wPrime, ...(lowestBlock !== undefined && { block: lowestBlock }) }
  return { wPrime, pieces, minimum, drawnOn: lowest < start, ...(runsOut && { runsOut }) }
}

/** The uncut share at a moment; 1 before the ride, its last value after. */
export function reserveAt({ pieces, wPrime }: ReserveCurve, at: Seconds): number {
  const piece = pieces[indexAt(pieces, at)]
  return piece === undefined ? 1 : balanceAt(piece, wPrime, Math.min(piece.to, Math.max(piece.from, at))) / wPrime
}
