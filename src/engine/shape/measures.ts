import { constantsOf } from '#engine/constants.ts'
import { effortLines, partFrom } from '#engine/recovery/effortLines.ts'
import type { RideReport } from '#engine/report.ts'
import { layTimeline } from '#engine/timeline/layTimeline.ts'
import type { Ride } from '#plan/model.ts'
import type { Effort, Seconds } from '#units/units.ts'
import { easyTail } from './effortMeasures.ts'

/** The measures of a class that its planner looks for. */
export interface Measures {
  /** From the first block to the first working effort; null where nothing works. */
  warmUp: Seconds | null
  /** The easy time at the end. */
  coolDown: Seconds
  /** What both are shares of: from the first block to the end of the last section. */
  riding: Seconds
  /** Start of the first hard bout; null without one. */
  firstHard: Seconds | null
  longestHard: Seconds
  longestStanding: Seconds
  /** The highest intended effort, and where it is first reached. */
  peak: { effort: Effort; at: Seconds } | null
}

/** Measures the class; linear in its blocks. */
export function measuresOf(ride: Ride, { recovery, totals }: Pick<RideReport, 'recovery' | 'totals'>): Measures {
  const rules = constantsOf(ride)
  const timeline = layTimeline(ride)
  const lines = effortLines(timeline.blocks)
  const start = ride.briefingSeconds
  const worked = lines.find((line) => partFrom(line, rules.warmUpEffort))
  const highest = Math.max(0, ...lines.map((line) => Math.max(line.start, line.end)))
  const top = lines.find((line) => Math.max(line.start, line.end) === highest)
  return {
    warmUp: worked ? partFrom(worked, rules.warmUpEffort)!.from - start : null,
    coolDown: easyTail(lines, rules.coolDownEffort),
    riding: (timeline.sections.at(-1)?.to ?? start) - start,
    firstHard: recovery.bouts[0]?.from ?? null,
    longestHard: recovery.bouts.reduce((longest, { workSeconds }) => Math.max(longest, workSeconds), 0),
    longestStanding: totals.longestStanding,
    peak: top ? { effort: highest, at: top.start === highest ? top.from : top.to } : null,
  }
}
