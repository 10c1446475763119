import { quadraticAt } from '#engine/demand/quadratic.ts'
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

/** What the ride asks of a rider, a step where blocks meet; gaps where nothing is known. */
export function demandRuns({ demand }: RiderReport): CurvePoint[][] {
  const runs: CurvePoint[][] = []
  let end = Number.NaN
  for (const piece of demand.flatMap((asked) => asked?.pieces ?? [])) {
    if (piece.from !== end) runs.push([])
    const run = runs.at(-1)!
    // A curved stretch is at most a cadence ramp on one brake: its middle is all that a chord would miss.
    for (const at of [piece.from, (piece.from + piece.to) / 2, piece.to]) {
      run.push({ at, value: quadraticAt(piece.effort, at - piece.from) })
    }
    end = piece.to
  }
  return runs
}

/** Predicted heart rate as a share of the reserve, a tenth of it a level. */
export const heartRuns = ({ response }: RiderReport, projection: Projection): CurvePoint[][] =>
  smoothRuns(response.pieces, (piece, at) => 10 * relaxedAt(piece, at), projection)

/** What is left of the reserve, a tenth of it a level; what the model holds below nothing is shown as nothing. */
export const reserveRuns = ({ reserve }: RiderReport, projection: Projection): CurvePoint[][] =>
  smoothRuns(reserve.pieces, (piece, at) => Math.max(0, (10 * balanceAt(piece, reserve.wPrime, at)) / reserve.wPrime), projection)

export const strainRuns = (curve: StrainCurve, projection: Projection): CurvePoint[][] =>
  smoothRuns(curve.pieces, (_, at) => strainAt(curve, at), projection)
