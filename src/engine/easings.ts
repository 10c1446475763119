import type { Ride } from '#plan/model.ts'
import { computeRide } from './computeRide.ts'
import { constantsOf } from './constants.ts'
import { easeDifficulty } from './findings/easeDifficulty.ts'
import type { Fix, RideReport } from './report.ts'
import type { DifficultyReport } from './shape/rateDifficulty.ts'
import { openSections, standingRuns } from './shape/standingRuns.ts'
import { layTimeline } from './timeline/layTimeline.ts'

/** One of the biggest reasons for a difficulty, with the edit that would move it and the difficulty after it. */
type Easing = DifficultyReport['reasons'][number] & { edit?: { fix: Fix; points: number } }

/** The biggest reasons for the difficulty of a class and what eases them; on request, as each edit is tried on the whole ride. */
export function easingsOf(ride: Ride, report: RideReport): Easing[] {
  const timeline = layTimeline(ride)
  const standing = standingRuns(timeline.blocks, openSections(timeline.sections))
  const rated = { ...report, rules: constantsOf(ride), standing }
  return report.difficulty.reasons.map((reason) => {
    const fix = easeDifficulty(rated, reason.part)
    if (!fix) return reason
    const { points } = computeRide(fix.command.apply(ride)).difficulty
    return points < report.difficulty.points ? { ...reason, edit: { fix, points } } : reason
  })
}
