import { riderBand } from '#engine/band/riderBand.ts'
import type { Constants } from '#engine/constants.ts'
import { blockDemands } from '#engine/demand/blockDemand.ts'
import { type RidingContext, riddenBy } from '#engine/demand/ridden.ts'
import { referenceRiderIndex, riderSetting } from '#engine/demand/riderSetting.ts'
import { STANDING_COST } from '#engine/demand/standingCost.ts'
import { energySpent } from '#engine/energy/energySpent.ts'
import type { PlayedBlock, Span } from '#engine/played.ts'
import type { RiderReport } from '#engine/report.ts'
import { reserveReport } from '#engine/reserve/reserveReport.ts'
import { heartCurve } from '#engine/response/heartCurve.ts'
import { maximumOf } from '#engine/response/heartMaximum.ts'
import { secondsByClass } from '#engine/response/minutesByClass.ts'
import { secondsByThreshold } from '#engine/response/secondsByThreshold.ts'
import { isUnplanned } from '#engine/timeline/isUnplanned.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Ride } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'

/** The riders a class is modelled for: its own, or the three default ones. */
export const ridersOf = (ride: Pick<Ride, 'riders'>): readonly Rider[] => (ride.riders?.length ? ride.riders : DEFAULT_RIDERS)

/** Demand, response, reserve and energy of every modelled rider, of what is planned. Cost: linear in spans and riders. */
export function reportRiders(ride: Ride, spans: readonly Span[], blocks: readonly PlayedBlock[], rules: Constants): RiderReport[] {
  const riders = ridersOf(ride)
  const reference = referenceRiderIndex(riders, ride.level)
  const context: RidingContext = { bike: ride.bike, datum: ride.datum, blocks }
  const planned = spans.filter((...at) => !isUnplanned(...at))
  return riders.map((rider, index) => {
    const ridden = riddenBy(rider, planned, context)
    const settingOf = ({ ledger }: PlayedBlock) => riderSetting(ride.bike, ride.datum, rider, ledger.after.nominal)
    const demand = blockDemands(ridden, blocks, settingOf)
    const range = { rest: rider.restingHr, max: maximumOf(rider) }
    const lift = STANDING_COST.beats / (range.max - range.rest)
    const curve = heartCurve(ridden, rules.heartRateTau, lift)
    const energy = energySpent(ridden, rider.massKg)
    const byThreshold = secondsByThreshold(curve.pieces, rider, range)
    return {
      rider,
      reference: index === reference,
      demand,
      response: {
        ...curve,
        range,
        secondsByClass: secondsByClass(curve.pieces),
        ...(byThreshold && { secondsByThreshold: byThreshold }),
      },
      reserve: reserveReport(ridden, rider),
      energy,
      load: demandLoad(demand, blocks),
      band: riderBand({ rider, ridden, blocks, settingOf, bike: ride.bike, curve, range, energy, tau: rules.heartRateTau, lift }),
    }
  })
}

/** Σ demand × minutes over the blocks whose demand is known. */
function demandLoad(demand: RiderReport['demand'], blocks: readonly PlayedBlock[]): number {
  let seconds = 0
  demand.forEach((asked, index) => {
    const { from, to } = blocks[index]!
    if (asked !== null) seconds += asked.mean * (to - from)
  })
  return seconds / 60
}
