import type { Footing } from '#engine/cadence/trackFeet.ts'
import type { Constants } from '#engine/constants.ts'
import type { Ledger } from '#engine/ledger/keepLedger.ts'
import type { RideReport } from '#engine/report.ts'
import type { StandingRun } from '#engine/shape/standingRuns.ts'
import type { Timeline } from '#engine/timeline/layTimeline.ts'
import type { Ride } from '#plan/model.ts'

/** All a rule may look at: the plan, its house rules and what has been computed of it. */
export interface Facts extends Omit<RideReport, 'findings'> {
  ride: Ride
  rules: Constants
  timeline: Timeline
  ledger: Ledger
  footings: readonly Footing[]
  standing: readonly StandingRun[]
}
