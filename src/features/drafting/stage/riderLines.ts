import type { Range } from '#engine/band/riderBand.ts'
import { demandLine } from '#engine/demand/demandLine.ts'
import type { CurvePoint, RiderReport } from '#engine/report.ts'
import { balanceAt } from '#engine/reserve/recovery.ts'
import { relaxedAt } from '#engine/response/relaxation.ts'
import { type StrainCurve, strainAt } from '#engine/shape/strainCurve.ts'
import type { ShownRider } from '#store/viewSlice.ts'
import type { Stretch } from '#units/units.ts'
import { type Projection, smoothRuns } from './curvePath.ts'
import { reaches, runsWithin } from './drawnStretch.ts'

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

/** The two ends of a band. */
interface Ends {
  low: CurvePoint[][]
  high: CurvePoint[][]
}

/** Where the demand of nine of ten such riders on such bikes would lie. */
export const demandBand = ({ band }: RiderReport, stretch = ALL): Ends => ({
  low: runsWithin(demandLine({ demand: band.demand.low }), stretch),
  high: runsWithin(demandLine({ demand: band.demand.high }), stretch),
})

/** The same of the predicted heart rate. */
export function heartBand({ response, band }: RiderReport, projection: Projection, stretch = ALL): Ends {
  const end = (which: keyof Range) => smoothRuns(within(response.pieces, stretch), (_, at) => 10 * band.heartAt(at)[which], projection)
  return { low: end('low'), high: end('high') }
}

/** The same of what is left of the reserve, by whichever recovery leaves least and most. */
export function reserveBand({ reserve, band }: RiderReport, projection: Projection, stretch = ALL): Ends {
  const end = (which: keyof Range) =>
    smoothRuns(within(reserve.pieces, stretch), (_, at) => Math.max(0, 10 * band.reserveAt(at)[which]), projection)
  return { low: end('low'), high: end('high') }
}

/** Strain, where there is a plan to strain at. */
export const strainRuns = (curve: StrainCurve, projection: Projection, stretch = ALL): CurvePoint[][] =>
  smoothRuns(
    within(curve.pieces, stretch).filter(({ held }) => !held),
    (_, at) => strainAt(curve, at),
    projection,
  )
