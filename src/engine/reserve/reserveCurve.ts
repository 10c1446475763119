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
  /** Lowest share; below 0 where the plan asks for more than there is. Shown as 0 %. */
  minimum: { at: Seconds; share: number; block?: number }
  /** Where it first runs out. */
  runsOut?: { at: Seconds; block?: number }
  /** False when the rider never goes above critical power. */
  drawnOn: boolean
}

type Powered = Pick<Ridden, 'from' | 'to' | 'watts' | 'block'>

/** The balance over the whole ride, full at its start. */
export function reserveCurve(ridden: readonly Powered[], { criticalPower, wPrime }: Pick<Rider, 'criticalPower' | 'wPrime'>): ReserveCurve {
  const pieces: BalancePiece[] = []
  const minimum: ReserveCurve['minimum'] = { at: ridden[0]?.from ?? 0, share: 1 }
  let value = wPrime
  let runsOut: ReserveCurve['runsOut']
  for (const { from, to, watts, block } of ridden) {
    for (const piece of balancePieces(watts, from, to, value, criticalPower, wPrime)) {
      pieces.push(piece)
      value = balanceAt(piece, wPrime, piece.to)
      if (value / wPrime < minimum.share) Object.assign(minimum, { at: piece.to, share: value / wPrime, block })
      if (value <= 0 && runsOut === undefined) {
        const at = drainsTo(piece, wPrime, 0)
        if (at !== null) runsOut = { at, block }
      }
    }
  }
  return { wPrime, pieces, minimum, drawnOn: minimum.share < 1, ...(runsOut && { runsOut }) }
}

/** The uncut share at a moment; 1 before the ride, its last value after. */
export function reserveAt({ pieces, wPrime }: ReserveCurve, at: Seconds): number {
  const piece = pieces[indexAt(pieces, at)]
  return piece === undefined ? 1 : balanceAt(piece, wPrime, Math.min(piece.to, Math.max(piece.from, at))) / wPrime
}
