import { type BlockDemand, blockDemands } from '#engine/demand/blockDemand.ts'
import type { Ridden } from '#engine/demand/ridden.ts'
import type { EnergyEstimate } from '#engine/energy/energySpent.ts'
import { once } from '#engine/once.ts'
import type { PlayedBlock } from '#engine/played.ts'
import { everyReserve, type ReserveCurve, reserveAt } from '#engine/reserve/reserveCurve.ts'
import { type HeartCurve, heartCurve, indexAt } from '#engine/response/heartCurve.ts'
import { type HeartRange, heartRateAt } from '#engine/response/heartReserve.ts'
import { relaxedAt, turningPoints } from '#engine/response/relaxation.ts'
import type { Bike } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { Seconds } from '#units/units.ts'
import { atEnd, type End } from './atEnd.ts'
import { driftAt, meanDrift } from './drift.ts'
import { together, UNCERTAINTY, type Uncertainty, uncertaintyOf } from './uncertainty.ts'

/** Where nine of ten would lie. */
export interface Range {
  low: number
  high: number
}

/** How far off what one rider meets may be. Each part is made when first read: a ride that is only planned pays for none. */
export interface RiderBand {
  readonly of: Uncertainty
  /** By played block, as the demand itself. */
  readonly demand: { low: (BlockDemand | null)[]; high: (BlockDemand | null)[] }
  /** Share of the heart's reserve at a moment. */
  heartAt: (at: Seconds) => Range
  /** Shares, and beats a minute with what is not known of the highest rate. */
  readonly heart: { highest: HeartFigure; mean: HeartFigure }
  /** What is left at a moment, by whichever recovery leaves least and most; uncut. */
  reserveAt: (at: Seconds) => Range
  readonly lowestReserve: Range
  /** Whether something is left throughout at its upper end. */
  mayLast: () => boolean
  /** kcal. */
  readonly energy: Range
}

interface HeartFigure {
  share: Range
  beats: Range
}

interface Banded {
  rider: Rider
  ridden: readonly Ridden[]
  blocks: readonly PlayedBlock[]
  settingOf: Parameters<typeof blockDemands>[2]
  bike: Bike
  curve: HeartCurve
  range: HeartRange
  energy: EnergyEstimate
  tau: Seconds
  lift: number
}

export function riderBand({ rider, ridden, blocks, settingOf, bike, curve, range, energy, tau, lift }: Banded): RiderBand {
  const of = once(() => uncertaintyOf(bike, rider))
  const ends = {
    low: once(() => ridden.map((span) => atEnd(span, -1, of()))),
    high: once(() => ridden.map((span) => atEnd(span, 1, of()))),
  }
  const demand = once(() => ({ low: blockDemands(ends.low(), blocks, settingOf), high: blockDemands(ends.high(), blocks, settingOf) }))
  const hearts = once(() => ({ low: heartCurve(ends.low(), tau, lift), high: heartCurve(ends.high(), tau, lift) }))
  const heart = once(() => {
    const { low, high } = hearts()
    const end = ridden.at(-1)?.to ?? 0
    return {
      highest: figure(curve.maximum.share, { low: low.maximum.share, high: highestDrifted(high, range) }),
      mean: figure(curve.mean, { low: low.mean, high: drifted(high.mean, range, meanDrift(end)) }),
    }
  })
  const figure = (share: number, band: Range): HeartFigure => {
    const at = (bound: number, end: End) => {
      const beats = heartRateAt(share, range)
      return beats + end * together(heartRateAt(bound, range) - beats, share * of().beats)
    }
    return { share: band, beats: { low: at(band.low, -1), high: at(band.high, 1) } }
  }
  // A heavy bike leaves least: its end is the low one here.
  const least = once(() => everyReserve(ends.high(), scaledReserve(rider, 1 - of().capacity)))
  const most = once(() => everyReserve(ends.low(), scaledReserve(rider, 1 + of().capacity)))
  return {
    get of() {
      return of()
    },
    get demand() {
      return demand()
    },
    heartAt: (at) => ({ low: shareAt(hearts().low, at), high: drifted(shareAt(hearts().high, at), range, driftAt(at)) }),
    get heart() {
      return heart()
    },
    reserveAt: (at) => ({
      low: Math.min(...least().map((one) => reserveAt(one, at))),
      high: Math.max(...most().map((one) => reserveAt(one, at))),
    }),
    get lowestReserve() {
      return { low: Math.min(...least().map(lowestOf)), high: Math.max(...most().map(lowestOf)) }
    },
    mayLast: () => most().some((curve) => lowestOf(curve) > 0),
    get energy() {
      const off = together(energy.pedalShare * of().watts.calibrated, UNCERTAINTY.energyModel)
      return { low: energy.kcal * (1 - off), high: energy.kcal * (1 + off) }
    },
  }
}

const lowestOf = ({ minimum }: ReserveCurve): number => minimum.share

const scaledReserve = ({ criticalPower, wPrime }: Rider, by: number) => ({ criticalPower, wPrime: wPrime * by })

const shareAt = ({ pieces }: HeartCurve, at: Seconds): number => {
  const piece = pieces[indexAt(pieces, at)]
  return piece === undefined ? 0 : relaxedAt(piece, Math.min(piece.to, Math.max(piece.from, at)))
}

/** A share of the reserve once the rate itself has risen by a part of it; the highest rate is the highest. */
const drifted = (share: number, range: HeartRange, by: number): number =>
  Math.min(1, (heartRateAt(share, range) * (1 + by) - range.rest) / (range.max - range.rest))

/** The highest the upper end comes to, each piece with the drift of its end. */
function highestDrifted({ pieces }: HeartCurve, range: HeartRange): number {
  let highest = 0
  for (const piece of pieces) {
    for (const at of [...turningPoints(piece), piece.to]) {
      highest = Math.max(highest, drifted(relaxedAt(piece, at), range, driftAt(piece.to)))
    }
  }
  return highest
}
