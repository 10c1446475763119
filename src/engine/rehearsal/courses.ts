import { sectionClock } from '#engine/cues/sectionClock.ts'
import type { Plan } from '#engine/leading/led.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Seconds } from '#units/units.ts'
import type { Course, Leg } from './course.ts'

/** Run-in where there are no beats: as long as stands for an eight elsewhere. */
const RUN_IN: Seconds = 5

/**
 * The whole ride; where the leader is waited for, up to the section after a second of the ride
 * clock. The course's clock is the ride's.
 */
export function courseOfRide({ report }: Plan, waitAfter: Seconds | null = null): Course {
  const next = waitAfter === null ? undefined : report.sections.find(({ from }) => from > waitAfter + NOW)
  const to = next?.from ?? report.overall.total
  return { legs: to > 0 ? [{ from: 0, to }] : [], repeats: false }
}

/** A section that begins this soon has begun. */
const NOW: Seconds = 1e-6

/** One played block again and again. */
export function courseOfBlock({ from, to }: PlayedBlock): Course {
  return { legs: to > from ? [{ from, to }] : [], repeats: true }
}

/** A block on a course, and where it stands in the ride. */
interface ShakyLeg extends Leg {
  blockId: string
  /** Index in the report's blocks: of a part of a set, the first round. */
  block: number
}

/**
 * The blocks marked as shaky in the order of the ride, each with an eight to come in, unless that is
 * what has just been played; marks of blocks that are gone count for nothing.
 */
export function shakyLegs({ ride, report }: Plan): ShakyLeg[] {
  const marked = new Set(ride.shaky)
  const legs: ShakyLeg[] = []
  for (const played of report.blocks) {
    if (!(played.to > played.from) || !marked.delete(played.block.id)) continue
    const from = Math.max(runIn({ ride, report }, played), legs.at(-1)?.to ?? 0)
    legs.push({ blockId: played.block.id, block: played.index, from, to: played.to })
  }
  return legs
}

/** An eight before a block, in the tempo of its own song; the ride's beginning at the earliest. */
function runIn({ ride, report }: Plan, { section, from, countFrom }: PlayedBlock): Seconds {
  const placed = report.sections[section]!
  const clock = sectionClock(ride.sections[section]!, placed.one)
  if (!clock.counted || countFrom === undefined) return Math.max(0, from - RUN_IN)
  return Math.max(0, clock.atBeat(clock.beatOf(countFrom) - placed.unit.eight))
}
