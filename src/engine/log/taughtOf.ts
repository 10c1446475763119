import type { RideReport } from '#engine/report.ts'
import { contentRevision } from '#plan/document/contentRevision.ts'
import type { TaughtBlock, TaughtClass, TaughtSection } from '#plan/kept/taught.ts'
import type { Ride } from '#plan/model.ts'
import type { Day } from '#units/day.ts'
import type { Seconds } from '#units/units.ts'

/** What an entry says besides what the plan does. */
interface TaughtWhen {
  id: string
  day: Day
  bookedAt?: string
  startedAt?: string
}

/** A ride with its own report. */
export interface Planned {
  ride: Ride
  report: RideReport
}

/**
 * A log entry made from the plan, to be put right where the class was another. Where the class was
 * led from the screen, what was led is the ride it became: sections that are missing in it, or were
 * left within ten seconds, were skipped, those with other blocks changed, and lengths are as they were played.
 */
export function taughtOf(planned: Planned, when: TaughtWhen, led: Planned = planned): TaughtClass {
  const { ride, report } = planned
  return {
    ...when,
    rideId: ride.id,
    title: ride.title || '–',
    revision: contentRevision(ride),
    room: ride.location ?? '',
    slotMinutes: ride.slotMinutes,
    sections: ride.sections.map((section, index) =>
      sectionOf({ ride, report }, index, led === planned ? undefined : ledSection(led, section.id, runOf(planned, index))),
    ),
  }
}

interface SectionRun {
  blocks: TaughtBlock[]
  seconds: number
}

/** Seconds within which a song that is left was not taught: it was the wrong one, or is skipped now that it plays (common practice). */
const BARELY_BEGUN: Seconds = 10

/** What became of a section; null where it was skipped, before it began or as soon as it had. */
function ledSection(led: Planned, id: string, planned: SectionRun): SectionRun | null {
  const index = led.ride.sections.findIndex((section) => section.id === id)
  if (index < 0) return null
  const run = runOf(led, index)
  return run.seconds < Math.min(BARELY_BEGUN, planned.seconds / 2) ? null : run
}

function runOf({ report }: Planned, index: number): SectionRun {
  const { blocks, one, to } = report.sections[index]!
  const played = report.blocks.slice(blocks.from, blocks.to).filter((block) => block.to > block.from)
  return {
    seconds: thousandths(to - one),
    blocks: played.map(({ block, from, to: end }) => ({
      name: block.label || block.terrain,
      terrain: block.terrain,
      posture: block.posture,
      ...(block.move && { move: block.move.name }),
      seconds: thousandths(end - from),
      effort: (block.effort.from + block.effort.to) / 2,
    })),
  }
}

/** @param led undefined where the class was not led from the screen, null where the section was skipped in it */
function sectionOf(planned: Planned, index: number, led: SectionRun | null | undefined): TaughtSection {
  const section = planned.ride.sections[index]!
  const own = runOf(planned, index)
  const run = led ?? own
  const changed = led != null && !alike(own, led)
  return {
    id: section.id,
    // By its number where nobody named it: what is kept is in no language.
    title: section.title || section.song?.title || `#${index + 1}`,
    ...(section.song?.artist && { artist: section.song.artist }),
    song: Boolean(section.song),
    outcome: led === null ? 'skipped' : changed ? 'changed' : 'taught',
    seconds: led === null ? 0 : run.seconds,
    blocks: run.blocks,
  }
}

/** Lengths this near are the plan's: a one heard a little late changes no block. */
const SECONDS_ALIKE = 1

const alike = (a: SectionRun, b: SectionRun): boolean =>
  a.blocks.length === b.blocks.length &&
  a.blocks.every((block, i) => block.name === b.blocks[i]!.name && Math.abs(block.seconds - b.blocks[i]!.seconds) <= SECONDS_ALIKE)

const thousandths = (seconds: number): number => Math.round(seconds * 1000) / 1000
