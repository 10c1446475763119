import { sectionClock } from '#engine/cues/sectionClock.ts'
import type { Plan } from '#engine/leading/led.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Seconds } from '#units/units.ts'

/** What stands for an eight where there are no beats. */
const WITHOUT_BEATS: Seconds = 5

const ridden = ({ from, to }: PlayedBlock): boolean => to > from

/** The block that is ridden at a moment; undefined between blocks. */
export const blockAt = ({ report }: Plan, at: Seconds): PlayedBlock | undefined =>
  report.blocks.find((played) => ridden(played) && at >= played.from && at < played.to)

/** Where the next block begins; the end of the ride after the last. */
export function nextBlockFrom({ report }: Plan, at: Seconds): Seconds {
  return report.blocks.find((played) => ridden(played) && played.from > at + NOW)?.from ?? report.overall.total
}

/** A block that begins this soon is the one that is ridden. */
const NOW: Seconds = 1e-6

/** This block from its start, or in its first eight the one before; the ride's beginning before the first. */
export function backFrom(plan: Plan, at: Seconds): Seconds {
  const begun = plan.report.blocks.filter((played) => ridden(played) && played.from <= at + NOW)
  const here = begun.at(-1)
  if (!here) return 0
  return at - here.from > firstEight(plan, here) ? here.from : (begun.at(-2)?.from ?? 0)
}

function firstEight({ ride, report }: Plan, { section, countFrom, from }: PlayedBlock): Seconds {
  const placed = report.sections[section]!
  const clock = sectionClock(ride.sections[section]!, placed.one)
  return clock.counted && countFrom !== undefined ? clock.at(countFrom + placed.unit.eight) - from : WITHOUT_BEATS
}
