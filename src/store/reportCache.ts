import { onAnotherBike } from '#engine/anotherBike/onAnotherBike.ts'
import type { RideReport } from '#engine/report.ts'
import type { Bike, Ride } from '#plan/model.ts'
import { sameScale } from '#plan/scale/sameScale.ts'

export type ReportOf = (ride: Ride) => RideReport

/** One computation for every ride object; going back to a ride, as undo does, costs none. Rides nobody holds are forgotten. */
export function reportCache(compute: ReportOf): ReportOf {
  const known = new WeakMap<Ride, RideReport>()
  return (ride) => {
    const found = known.get(ride)
    if (found) return found
    const report = compute(ride)
    known.set(ride, report)
    return report
  }
}

/** Reports in the words of a bike, while there is one and it differs from the ride's; one translation for every report and bike. */
export function readOnBike(planned: ReportOf, bike: () => Bike | null): ReportOf {
  const known = new WeakMap<Bike, WeakMap<RideReport, RideReport>>()
  return (ride) => {
    const report = planned(ride)
    const on = bike()
    if (!on || sameScale(on, ride.bike)) return report
    const ofBike = known.get(on) ?? new WeakMap<RideReport, RideReport>()
    known.set(on, ofBike)
    const found = ofBike.get(report) ?? onAnotherBike(ride, report, on)
    ofBike.set(report, found)
    return found
  }
}
