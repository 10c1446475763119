import type { CurvePoint, RiderReport, StrainCurve } from '#engine/report.ts'
import { balanceAt } from '#engine/reserve/balance.ts'
import { relaxedAt } from '#engine/response/relaxation.ts'
import { strainAt } from '#engine/shape/strainCurve.ts'
import type { ShownRider } from '#store/viewSlice.ts'
import { type Projection, smoothRuns } from './curvePath.ts'
import { reaches, type Stretch } from './drawnStretch.ts'

/** All of a ride. */
const ALL: Stretch = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY }

const within = <Piece extends Stretch>(pieces: readonly Piece[], stretch: Stretch): readonly Piece[] =>
  stretch === ALL ? pieces : pieces.filter((piece) => reaches(stretch, piece))

/** The riders whose lines are drawn. */
export function shownRiders(riders: readonly RiderReport[], shown: ShownRider): readonly RiderReport[] {
  if (shown === 'all') return riders
  const one = riders.find(({ rider }) => rider.id === shown) ?? riders.find(({ reference }) => reference)
  return one ? [one] : []
}

/** Predicted heart rate as a share of the reserve, a tenth of it a level. */
export const heartRuns = ({ response }: RiderReport, projection: Projection, stretch = ALL): CurvePoint[][] =>
  smoothRuns(within(response.pieces, stretch), (piece, at) => 10 * relaxedAt(piece, at), projection)

/** What is left of the reserve, a tenth of it a level; what the model holds below nothing is shown as nothing. */
export const reserveRuns = ({ reserve }: RiderReport, projection: Projection, stretch = ALL): CurvePoint[][] =>
  smoothRuns(
    within(reserve.pieces, stretch),
    (piece, at) => Math.max(0, (10 * balanceAt(piece, reserve.wPrime, at)) / reserve.wPrime),
    projection,
  )

/** Strain, where there is a plan to strain at. */
export const strainRuns = (curve: StrainCurve, projection: Projection, stretch = ALL): CurvePoint[][] =>
  smoothRuns(
    within(curve.pieces, stretch).filter(({ held }) => !held),
    (_, at) => strainAt(curve, at),
    projection,
  )
