import type { Constants } from '#engine/constants.ts'
import type { Ledger } from '#engine/ledger/keepLedger.ts'
import type { EffortLine } from '#engine/recovery/effortLines.ts'
import { isUnplanned } from '#engine/timeline/isUnplanned.ts'
import type { Timeline } from '#engine/timeline/layTimeline.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Ride } from '#plan/model.ts'
import type { Effort, KnobSteps, Seconds } from '#units/units.ts'
import { easyTail, effortCentre, effortSeconds, workAndEase } from './effortMeasures.ts'
import type { StandingRun } from './standingRuns.ts'

/** The figures of the whole ride. */
export interface Overall {
  readonly total: Seconds
  readonly slot: Seconds
  /** slot − total; negative when the slot is overrun. */
  readonly slack: Seconds
  /** Time of which the plan does not say what riders do: open tails and open songs. No estimate counts it. */
  readonly unplanned: Seconds
  readonly workSeconds: Seconds
  readonly easySeconds: Seconds
  readonly ratio: number | null
  /** Share of all block time at work effort, 0–1. */
  readonly workShare: number
  /** Time-weighted mean of the intended effort over blocks. */
  readonly meanEffort: Effort
  /** Σ effort × minutes. */
  readonly sessionLoad: number
  /** Longest unbroken standing in seconds; sets of jumps do not count. */
  readonly longestStanding: Seconds
  readonly highestTotal: KnobSteps
  readonly endsAt: LedgerState
  /** Centre of the effort over time, 0–1. */
  readonly centroid: number | null
  /** Trailing stretch at effort 2 or less. */
  readonly tailSeconds: Seconds
}

/** Effort of 2 or less is the tail of a class. */
const TAIL_EFFORT = 2

/** The figures of the whole ride. */
export function overallOf(
  ride: Ride,
  timeline: Timeline,
  lines: readonly EffortLine[],
  ledger: Ledger,
  runs: readonly StandingRun[],
  rules: Constants,
): Overall {
  const slot = ride.slotMinutes * 60
  const work = workAndEase(lines, rules.workEffort, rules.easyEffort)
  const blockSeconds = lines.reduce((sum, { from, to }) => sum + to - from, 0)
  const effort = effortSeconds(lines)
  const ridingEnd = timeline.sections.at(-1)?.to ?? ride.briefingSeconds
  return {
    total: timeline.total,
    slot,
    slack: slot - timeline.total,
    unplanned: timeline.spans.filter(isUnplanned).reduce((sum, { from, to }) => sum + to - from, 0),
    ...work,
    workShare: blockSeconds > 0 ? work.workSeconds / blockSeconds : 0,
    meanEffort: blockSeconds > 0 ? effort / blockSeconds : 0,
    sessionLoad: effort / 60,
    longestStanding: runs.reduce((longest, { from, to }) => Math.max(longest, to - from), 0),
    highestTotal: ledger.lines.reduce((highest, { entry }) => Math.max(highest, entry.after.nominal), ledger.start.nominal),
    endsAt: ledger.end,
    centroid: effortCentre(lines, ride.briefingSeconds, ridingEnd),
    tailSeconds: easyTail(lines, TAIL_EFFORT),
  }
}
