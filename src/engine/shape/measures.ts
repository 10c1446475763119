import type { Constants } from '#engine/constants.ts'
import { type EffortLine, partFrom } from '#engine/recovery/effortLines.ts'
import type { RecoveryReport } from '#engine/recovery/findBouts.ts'
import type { Timeline } from '#engine/timeline/layTimeline.ts'
import type { Ride } from '#plan/model.ts'
import type { Effort, Seconds } from '#units/units.ts'
import { easyTail } from './effortMeasures.ts'
import type { Overall } from './overall.ts'

/**
 * The measures of a class that its planner looks for, defined here and nowhere else: findings, the arc, the difficulty, the
 * panel and what is said before the first song all read them. Hard is `hardEffort` or more, in unbroken bouts.
 */
export interface Measures {
  /** From the first block to the first working effort; null where nothing works. */
  readonly warmUp: Seconds | null
  /** The easy time at the end. */
  readonly coolDown: Seconds
  /** What both are shares of: from the first block to the end of the last section. */
  readonly riding: Seconds
  /** Start of the first hard bout; null without one. */
  readonly firstHard: Seconds | null
  /** The longest hard bout; 0 without one. */
  readonly longestHard: Seconds
  /** Start of the last of the hardest bouts; null without one. */
  readonly lastHardest: Seconds | null
  readonly longestStanding: Seconds
  /** The highest intended effort, and where it is first reached. */
  readonly peak: { readonly effort: Effort; readonly at: Seconds } | null
}

/** Measures the class; linear in its blocks. */
export function measuresOf(
  ride: Pick<Ride, 'briefingSeconds'>,
  { sections }: Timeline,
  lines: readonly EffortLine[],
  { bouts }: RecoveryReport,
  { longestStanding }: Overall,
  rules: Constants,
): Measures {
  const start = ride.briefingSeconds
  const worked = lines.find((line) => partFrom(line, rules.warmUpEffort))
  const highest = lines.reduce((most, { start: first, end }) => Math.max(most, first, end), 0)
  const top = lines.find((line) => Math.max(line.start, line.end) === highest)
  const hardest = bouts.reduce((most, { peak }) => Math.max(most, peak), 0)
  return {
    warmUp: worked ? partFrom(worked, rules.warmUpEffort)!.from - start : null,
    coolDown: easyTail(lines, rules.coolDownEffort),
    riding: (sections.at(-1)?.to ?? start) - start,
    firstHard: bouts[0]?.from ?? null,
    longestHard: bouts.reduce((longest, { workSeconds }) => Math.max(longest, workSeconds), 0),
    lastHardest: bouts.findLast(({ peak }) => peak === hardest)?.from ?? null,
    longestStanding,
    peak: top ? { effort: highest, at: top.start === highest ? top.from : top.to } : null,
  }
}
