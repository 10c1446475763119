import { constantsOf } from '#engine/constants.ts'
import type { RideReport } from '#engine/report.ts'
import { isInside, startLead, startsWithBlock } from '#plan/cueStart.ts'
import { patched, sameValue } from '#plan/edits.ts'
import type { Cue, CueMoment, Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { sectionClock } from './sectionClock.ts'
import { usualCount, usualLead } from './usualPlace.ts'

/** The moments of a block at which something is usually said, in the order of time. */
export type SpotName = 'preview' | 'before' | 'countIn' | 'change' | 'start' | 'middle' | 'lastTwo' | 'lastOne' | 'end'

/** One of them: how a cue there is written down, and when it is. */
export interface CueSpot {
  readonly name: SpotName
  readonly moment: CueMoment
  readonly lead: Cue['lead']
  /** On the ride clock: where words ahead of the change or inside the block are over; as the block begins, where they begin. */
  readonly at: Seconds
}

type Planned = Pick<RideReport, 'blocks' | 'sections' | 'cues'>

/** "Last ten seconds", where no music counts. */
const LAST_SECONDS = 10

/**
 * The moments of a played block, in the order of time: those before its change by the studio's rules, the change, and inside
 * it start, middle, its last two eights and its last one (without music its last ten seconds), and its end. What has no time
 * is left out: nothing is said before the class begins, and a short block has no middle.
 *
 * @param index into the report's blocks
 */
export function cueSpots(ride: Ride, { blocks, sections, cues }: Planned, index: number): CueSpot[] {
  const played = blocks[index]!
  const { from, to } = played
  const section = sections[played.section]!
  const clock = sectionClock(ride.sections[played.section]!, section.one)
  const counted = 'counts' in played.block.length && section.bpm !== undefined
  const rules = constantsOf(ride)
  const wordsEnd = cues.changes.find(({ block }) => block === index)?.wordsEnd
  const back = (end: Seconds, lead: Cue['lead']): Seconds =>
    'counts' in lead ? clock.atBeat(clock.beatAt(end) - lead.counts) : end - lead.seconds
  const ahead = (name: SpotName, moment: CueMoment): CueSpot => {
    const lead = usualLead(moment, rules, counted, wordsEnd)
    return { name, moment, lead, at: back(from, lead) }
  }
  const before = [ahead('preview', 'preview'), ahead('before', 'announce'), ...(counted ? [ahead('countIn', 'countIn')] : [])].filter(
    ({ at }) => at > 0,
  )

  const length = counted ? Math.round(clock.beatAt(to) - clock.beatAt(from)) : to - from
  const last = counted ? section.unit.eight : LAST_SECONDS
  const inside = (name: SpotName, amount: number): CueSpot => {
    const lead = counted ? { counts: amount } : { seconds: amount }
    return { name, moment: 'form', lead, at: back(to, lead) }
  }
  return [
    ...before,
    ahead('change', 'action'),
    { name: 'start', moment: 'form', lead: startLead(counted ? 'counts' : 'seconds'), at: from },
    ...(length >= 4 * last ? [inside('middle', Math.round(length / 2))] : []),
    ...(counted && length > 4 * last ? [inside('lastTwo', 2 * last)] : []),
    ...(length > last ? [inside('lastOne', last)] : []),
    inside('end', 0),
  ]
}

type Placed = Pick<Cue, 'moment' | 'lead'>

/** The moment a cue is at; undefined where it was put elsewhere by hand. */
export const spotOf = (spots: readonly CueSpot[], cue: Placed): CueSpot | undefined =>
  spots.find(({ moment, lead }) => {
    if (isInside({ moment }) !== isInside(cue)) return false
    if (!isInside(cue) && moment !== cue.moment) return false
    return sameValue(lead, cue.lead) || (isInside(cue) && startsWithBlock(lead) && startsWithBlock(cue.lead))
  })

/**
 * The moment one step later or earlier than a cue, which stays at the last and at the first.
 *
 * @param at when it is, for a cue that is at none of them
 */
export function nextSpot(spots: readonly CueSpot[], cue: Placed, at: Seconds, step: 1 | -1): CueSpot {
  const held = spotOf(spots, cue)
  if (held) return spots[Math.min(spots.length - 1, Math.max(0, spots.indexOf(held) + step))]!
  return (step > 0 ? spots.find((spot) => spot.at > at) : spots.findLast((spot) => spot.at < at)) ?? spots.at(step > 0 ? -1 : 0)!
}

/** A cue at one of the moments; a story stays one inside its block, and a count-in counts as long as it did or as the studio does. */
export function atSpot(ride: Ride, cue: Cue, { moment, lead }: CueSpot): Cue {
  return patched(cue, {
    moment: isInside({ moment }) && cue.moment === 'story' ? 'story' : moment,
    lead,
    count: moment === 'countIn' ? (cue.count ?? usualCount(constantsOf(ride))) : undefined,
  })
}
