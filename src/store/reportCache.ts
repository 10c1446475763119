import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'

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
