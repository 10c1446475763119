import { constantsOf } from '#engine/constants.ts'
import { atSpot, type CueSpot, cueSpots, nextSpot, type SpotName, spotOf } from '#engine/cues/cueSpots.ts'
import { type CueStop, cueStops, freeAfter, timeOf } from '#engine/cues/cueStops.ts'
import { placeTyped } from '#engine/cues/placeInside.ts'
import { usualCount } from '#engine/cues/usualPlace.ts'
import type { RideReport } from '#engine/report.ts'
import { isInside } from '#plan/cueStart.ts'
import type { Cue, CueMoment, Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import type { Seconds } from '#units/units.ts'

/** Where words are about to be said. */
export type Place = Pick<Cue, 'moment' | 'lead'>

/** What the line is at: a cue of its block, or a moment for a new one. */
export type At =
  | { readonly cueId: string }
  /** `chosen` where somebody went to this moment, so that words do not bring their own along. */
  | { readonly place: Place; readonly chosen: boolean }

interface Plan {
  ride: Ride
  report: RideReport
}

/** Index of a block as it is played first; -1 where it is not played. */
export const playedIndex = ({ report }: Plan, blockId: string): number =>
  report.blocks.findIndex(({ block, from, to }) => block.id === blockId && to > from)

/** The block before or after, of those that are played, in the order in which they are. */
export function nextBlock({ report }: Plan, blockId: string, step: 1 | -1): string | undefined {
  const ids = [...new Set(report.blocks.filter(({ from, to }) => to > from).map(({ block }) => block.id))]
  const at = ids.indexOf(blockId)
  return at === -1 ? undefined : ids[at + step]
}

const whereOf = ({ cue, spot }: CueStop): At => (cue ? { cueId: cue.id } : { place: spot!, chosen: false })

/** Where the line opens: at the first moment without words from just before the change on, else at the first cue. */
export function opening(plan: Plan, index: number): At {
  const stops = cueStops(plan.ride, plan.report, index)
  const from = stops.find(({ spot }) => spot?.name === 'before')?.at ?? plan.report.blocks[index]!.from
  return whereOf(freeAfter(stops, from) ?? stops.find(({ cue }) => cue) ?? stops[0]!)
}

/** Where the line goes in another block: to the same moment as in the last one, and what is said there. */
export function sameMoment(plan: Plan, index: number, name: SpotName | undefined): At {
  const stop = cueStops(plan.ride, plan.report, index).find(({ spot }) => spot !== undefined && spot.name === name)
  return stop ? whereOf(stop) : opening(plan, index)
}

/** Where the line goes once a cue is kept: to the next moment without words, else to a further one at the same. */
export function afterKeeping(plan: Plan, index: number, kept: Place & { id: string }): At {
  const stops = cueStops(plan.ride, plan.report, index)
  const at = stops.find(({ cue }) => cue?.id === kept.id)?.at ?? -Infinity
  const free = freeAfter(stops, at)
  return free ? whereOf(free) : { place: kept, chosen: false }
}

/** One stop earlier or later; stays at the first and the last. */
export function stepOn(plan: Plan, index: number, at: At, step: 1 | -1): At {
  const stops = cueStops(plan.ride, plan.report, index)
  const here = stopAt(plan, index, stops, at)
  const to = stops[Math.min(stops.length - 1, Math.max(0, step === 1 ? Math.floor(here) + 1 : Math.ceil(here) - 1))]!
  const went = whereOf(to)
  return 'place' in went ? { ...went, chosen: true } : went
}

/** The place among the stops; between two where the line is at none of them. */
function stopAt(plan: Plan, index: number, stops: readonly CueStop[], at: At): number {
  if ('cueId' in at) return stops.findIndex(({ cue }) => cue?.id === at.cueId)
  const spots = spotsOf(plan, index)
  const spot = spotOf(spots, at.place)
  const same = stops.findLastIndex((stop) => stop.spot?.name === spot?.name && spot !== undefined)
  // A further cue at a moment comes after those that are there.
  if (same !== -1) return stops[same]!.cue ? same + 0.5 : same
  const time = timeOfPlace(plan, index, at.place)
  return stops.filter((stop) => stop.at <= time).length - 0.5
}

/** Words that are not kept yet, one moment earlier or later. */
export const wordsMoved = (plan: Plan, index: number, place: Place, step: 1 | -1): At => ({
  place: nextSpot(spotsOf(plan, index), place, timeOfPlace(plan, index, place), step),
  chosen: true,
})

/** A cue that is there, one moment earlier or later. */
export const cueMoved = (plan: Plan, index: number, cue: Cue, step: 1 | -1): Cue =>
  atSpot(plan.ride, cue, nextSpot(spotsOf(plan, index), cue, timeOf(plan, index, cue), step))

/** Where words with a moment of their own are said, unless the line is at one of that kind already. */
export function placeOfWords(plan: Plan, index: number, text: string, moment: CueMoment, here: Place): Place {
  if (moment === here.moment || (isInside({ moment }) && isInside(here))) return here
  if (isInside({ moment })) return { moment, lead: placeTyped(plan.ride, plan.report, index, text) }
  const spot = spotsOf(plan, index).find((one) => one.moment === moment)
  return spot ?? here
}

/** A new cue as it would be kept. */
export const cueAt = ({ ride }: Pick<Plan, 'ride'>, id: string, { moment, lead }: Place, text: string, count?: 4 | 8): Cue => ({
  ...{ id, moment, lead, text },
  ...(moment === 'countIn' && { count: count ?? usualCount(constantsOf(ride)) }),
})

/** The moment's name and how long before the change or the end that is, for telling it. */
export function momentOf(plan: Plan, index: number, cue: Place): { name: SpotName | 'beforeChange' | 'beforeEnd'; lead: Place['lead'] } {
  const spot = spotOf(spotsOf(plan, index), cue)
  return { name: spot?.name ?? (isInside(cue) ? 'beforeEnd' : 'beforeChange'), lead: cue.lead }
}

/** When a place of a block is, on the ride clock. */
export function timeOfPlace(plan: Plan, index: number, place: Place): Seconds {
  const spot = spotOf(spotsOf(plan, index), place)
  return spot?.at ?? timeOf(plan, index, place)
}

const spotsOf = ({ ride, report }: Plan, index: number): CueSpot[] => cueSpots(ride, report, index)

/** The cue of a block by its id. */
export const cueOf = ({ ride }: Plan, blockId: string, cueId: string): Cue | undefined =>
  findBlock(ride, blockId)?.block.cues.find(({ id }) => id === cueId)
