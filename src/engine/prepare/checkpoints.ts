import type { RideReport } from '#engine/report.ts'
import { beginOf } from '#engine/timeline/beginOf.ts'
import type { Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { wallClockAfter } from '#units/wallClockAfter.ts'

/** A song start to look at the clock by. */
interface Checkpoint {
  /** Index of the section. */
  section: number
  /** When it begins on the ride clock. */
  at: Seconds
  /** The time of day it should be, where the ride says when it starts. */
  clock?: string
}

/** Shares of the class at which leaders check the clock. Common practice. */
const CHECKPOINT_SHARES = [0.25, 0.5, 0.75, 0.9] as const

/**
 * The section starts nearest to 25, 50, 75 and 90 % of the class, each once, in order. The first
 * section is none: it starts with the class.
 */
export function checkpoints(
  { startsAt }: Pick<Ride, 'startsAt'>,
  { sections, overall }: Pick<RideReport, 'sections' | 'overall'>,
): Checkpoint[] {
  const later = sections.map((report, section) => ({ section, at: beginOf(report) })).slice(1)
  if (later.length === 0) return []
  const chosen = CHECKPOINT_SHARES.map((share) => {
    const wanted = share * overall.total
    return later.reduce((best, one) => (Math.abs(one.at - wanted) < Math.abs(best.at - wanted) ? one : best))
  })
  const once = later.filter((one) => chosen.includes(one))
  return once.map((one) => ({ ...one, ...(startsAt !== undefined && { clock: wallClockAfter(startsAt, one.at) }) }))
}
