import type { CurvePoint, RiderReport, StrainCurve } from '#engine/report.ts'
import { balanceAt } from '#engine/reserve/balance.ts'
import { relaxedAt } from '#engine/response/relaxation.ts'
import { strainAt } from '#engine/shape/strainCurve.ts'
import type { ShownRider } from '#store/viewSlice.ts'
import { type Projection, smoothRuns } from './curvePath.ts'

/** The riders whose lines are drawn. */
export function shownRiders(riders: readonly RiderReport[], shown: ShownRider): readonly RiderReport[] {
  if (shown === 'all') return riders
  const one = riders.find(({ rider }) => rider.id === shown) ?? riders.find(({ reference }) => reference)
  return one ? [one] : []
}

/** Predicted heart rate as a share of the reserve, a tenth of it a level. */
export const heartRuns = ({ response }: RiderReport, projection: Projection): CurvePoint[][] =>
  smoothRuns(response.pieces, (piece, at) => 10 * relaxedAt(piece, at), projection)

/** What is left of the reserve, a tenth of it a level; what the model holds below nothing is shown as nothing. */
export const reserveRuns = ({ reserve }: RiderReport, projection: Projection): CurvePoint[][] =>
  smoothRuns(reserve.pieces, (piece, at) => Math.max(0, (10 * balanceAt(piece, reserve.wPrime, at)) / reserve.wPrime), projection)

export const strainRuns = (curve: StrainCurve, projection: Projection): CurvePoint[][] =>
  smoothRuns(curve.pieces, (_, at) => strainAt(curve, at), projection)
