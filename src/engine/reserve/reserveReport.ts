import type { Ridden } from '#engine/demand/ridden.ts'
import { once } from '#engine/once.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { Seconds } from '#units/units.ts'
import { RECOVERIES } from './recovery.ts'
import { everyReserve, type ReserveCurve, reserveCurve } from './reserveCurve.ts'

/** One rider's reserve: the differential form, and what the other recoveries say of it. */
export interface ReserveReport extends Omit<ReserveCurve, 'runsOut'> {
  /** By every recovery, in their order. Made when first read. */
  readonly byRecovery: readonly ReserveCurve[]
  /** Where it has run out by most of them, and by how many it does in the end. */
  readonly runsOut?: { readonly at: Seconds; readonly block?: number; readonly recoveries: number }
}

/** A share of W′ that is shown as 0 %. */
export const NOTHING_LEFT = 0.005

/** More than half of them. */
const MOST = Math.floor(RECOVERIES.length / 2) + 1

export function reserveReport(ridden: readonly Ridden[], rider: Pick<Rider, 'criticalPower' | 'wPrime'>): ReserveReport {
  const { runsOut: _, ...curve } = reserveCurve(ridden, rider)
  const byRecovery = once(() => everyReserve(ridden, rider))
  const runsOut = curve.drawn >= (1 - NOTHING_LEFT) * rider.wPrime ? byMost(byRecovery()) : undefined
  return {
    ...curve,
    ...(runsOut && { runsOut }),
    get byRecovery() {
      return byRecovery()
    },
  }
}

function byMost(curves: readonly ReserveCurve[]): ReserveReport['runsOut'] {
  const found = curves
    .flatMap(({ runsOut, minimum }) => runsOut ?? (minimum.share < NOTHING_LEFT ? [minimum] : []))
    .sort((a, b) => a.at - b.at)
  const when = found[MOST - 1]
  return when && { at: when.at, ...(when.block !== undefined && { block: when.block }), recoveries: found.length }
}
