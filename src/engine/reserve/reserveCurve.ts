import { areaUnder } from '#engine/demand/quadratic.ts'
import { indexAt } from '#engine/response/heartCurve.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { Seconds } from '#units/units.ts'
import { balanceAt, integralTau, RECOVERIES, type Recovery, type ReservePiece, recoveredBy, runsOutIn, turnsIn } from './recovery.ts'
import { type Powered, type ReserveStretch, stretchesOf } from './stretches.ts'

/** One rider's reserve over the ride: the W′ balance as a share of W′, by one recovery. */
export interface ReserveCurve {
  recovery: Recovery
  /** Joules. */
  wPrime: number
  /** Time constant of the integral form, seconds. */
  tau: Seconds
  pieces: ReservePiece[]
  /** Lowest share; below 0 where the plan asks for more than there is, which is shown as 0 %. `block`: index into the report's blocks. */
  minimum: { at: Seconds; share: number; block?: number }
  /** Where it first runs out. */
  runsOut?: { at: Seconds; block?: number }
  /** False when the rider never goes above critical power. */
  drawnOn: boolean
  /** Work above critical power in all, joules: where it is less than W′, no recovery runs out. */
  drawn: number
}

interface Followed {
  recovery?: Recovery
  /** Time constant of the integral form, where it is that of a whole ride these spans are a part of. */
  tau?: Seconds
  /** Joules to start with; full unless given. */
  start?: number
}

type Capacity = Pick<Rider, 'criticalPower' | 'wPrime'>

/** The balance over the whole ride; over a gap between spans it stands still. */
export const reserveCurve = (ridden: readonly Powered[], { criticalPower, wPrime }: Capacity, followed?: Followed): ReserveCurve =>
  follow(stretchesOf(ridden, criticalPower), wPrime, followed)

/** The balance by every recovery, in their order. */
export function everyReserve(ridden: readonly Powered[], { criticalPower, wPrime }: Capacity): ReserveCurve[] {
  const stretches = stretchesOf(ridden, criticalPower)
  return RECOVERIES.map((recovery) => follow(stretches, wPrime, { recovery }))
}

function follow(
  stretches: readonly ReserveStretch[],
  wPrime: number,
  { recovery = 'differential', tau: given, start = wPrime }: Followed = {},
): ReserveCurve {
  const tau = given ?? (recovery === 'integral' ? integralTau(stretches) : 0)
  const pieces: ReservePiece[] = []
  let value = start
  let drawn = 0
  let lowest = start
  let lowestAt = stretches[0]?.from ?? 0
  let lowestBlock: number | undefined
  let runsOut: ReserveCurve['runsOut']
  for (const stretch of stretches) {
    const piece = recoveredBy(recovery, stretch, value, wPrime, tau)
    const { to, drains, block } = piece
    pieces.push(piece)
    value = balanceAt(piece, wPrime, to)
    if (!drains) continue
    drawn += areaUnder(piece.excess, to - piece.from)
    for (const at of [...turnsIn(piece), to]) {
      const found = at === to ? value : balanceAt(piece, wPrime, at)
      if (found >= lowest) continue
      lowest = found
      lowestAt = at
      lowestBlock = block
    }
    const at = runsOut === undefined && lowest <= 0 ? runsOutIn(piece, wPrime) : null
    if (at !== null) runsOut = { at, ...(block !== undefined && { block }) }
  }
  const minimum = { at: lowestAt, share: lowest / wPrime, ...(lowestBlock !== undefined && { block: lowestBlock }) }
  return { recovery, wPrime, tau, pieces, minimum, drawnOn: lowest < start, drawn, ...(runsOut && { runsOut }) }
}

/** The uncut share at a moment; 1 before the ride, its last value after. */
export function reserveAt({ pieces, wPrime }: ReserveCurve, at: Seconds): number {
  const piece = pieces[indexAt(pieces, at)]
  return piece === undefined ? 1 : balanceAt(piece, wPrime, Math.min(piece.to, Math.max(piece.from, at))) / wPrime
}
