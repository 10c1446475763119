import type { RideReport } from '#engine/report.ts'
import { isInside, startsWithBlock } from '#plan/cueStart.ts'
import type { Cue, Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { type CueSpot, cueSpots, type SpotName, spotOf } from './cueSpots.ts'
import { sectionClock } from './sectionClock.ts'

/** A stop on the way through what is said at a block: a cue that is there, or one of its moments where nothing is said yet. */
export interface CueStop {
  readonly at: Seconds
  /** None for a cue that was put between the moments by hand. */
  readonly spot?: CueSpot
  readonly cue?: Cue
}

type Planned = Pick<RideReport, 'blocks' | 'sections' | 'cues'>

/**
 * The stops of a played block in the order of time: every moment once, or as often as cues stand at it, and the cues that
 * stand between them.
 *
 * @param index into the report's blocks
 */
export function cueStops(ride: Ride, report: Planned, index: number): CueStop[] {
  const spots = cueSpots(ride, report, index)
  const { cues } = report.blocks[index]!.block
  const stops: CueStop[] = spots.flatMap((spot) => {
    const there = cues.filter((cue) => spotOf(spots, cue) === spot)
    return there.length > 0 ? there.map((cue) => ({ at: spot.at, spot, cue })) : [{ at: spot.at, spot }]
  })
  for (const cue of cues.filter((one) => !spotOf(spots, one))) {
    const at = timeOf({ ride, report }, index, cue)
    const next = stops.findIndex((stop) => stop.at > at)
    stops.splice(next === -1 ? stops.length : next, 0, { at, cue })
  }
  return stops
}

/** When a cue of a played block is: where its words are over, and for one that begins with its block where they begin. */
export function timeOf(
  { ride, report }: { ride: Ride; report: Planned },
  index: number,
  { moment, lead }: Pick<Cue, 'moment' | 'lead'>,
): Seconds {
  const { from, to, section } = report.blocks[index]!
  if (isInside({ moment }) && startsWithBlock(lead)) return from
  const end = isInside({ moment }) ? to : from
  const clock = sectionClock(ride.sections[section]!, report.sections[section]!.one)
  return 'counts' in lead ? clock.atBeat(clock.beatAt(end) - lead.counts) : end - lead.seconds
}

/** Where somebody who writes on and on goes: ahead of the change and then along the block; the rest is gone to on purpose. */
const ALONG: ReadonlySet<SpotName> = new Set(['before', 'start', 'middle', 'lastTwo', 'lastOne', 'end'])

/** The next moment at which nothing is said yet, after a time; undefined where there is none. One announcement is enough, wherever it stands. */
export function freeAfter(stops: readonly CueStop[], at: Seconds): CueStop | undefined {
  const isAnnounced = stops.some(({ cue }) => cue?.moment === 'announce')
  return stops.find(
    ({ spot, cue, at: then }) =>
      !cue && spot !== undefined && ALONG.has(spot.name) && then > at - 1e-6 && !(isAnnounced && spot.name === 'before'),
  )
}
