import { LIMITS } from '#plan/document/schema.ts'
import type { Ride } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { Decisions } from './decisions.ts'
import { joinLineages } from './joinLineages.ts'
import { mergeFields } from './mergeFields.ts'
import type { Three } from './onOneScale.ts'

/**
 * What belongs to the person who keeps the ride, where both sides are that person: private
 * notes, riders one by one, blocks marked as shaky, findings put aside, and what the ride was
 * made from. Notes and a rider that both changed differently are conflicts; marks are sets, so
 * each keeps what either side put on and loses what either took off.
 */
export function mergeOwn({ base, mine, theirs }: Three, decisions: Decisions): Partial<Ride> {
  const spread = (ride: Ride) => ({ privateNotes: ride.privateNotes, ...ridersById(ride) })
  const merged = mergeFields(
    { base: base ? spread(base) : undefined, mine: spread(mine), theirs: spread(theirs) },
    { id: 'own', of: 'ride', place: {} },
    decisions,
  )
  const ids = [mine, theirs].flatMap(({ riders = [] }) => riders.map(({ id }) => id))
  const riders = [...new Set(ids)].flatMap((id) => (merged[RIDER + id] as Rider | undefined) ?? [])
  const ancestors = joinLineages(mine.ancestors ?? [], theirs.ancestors ?? []).slice(0, LIMITS.ancestors)
  return {
    privateNotes: merged.privateNotes as string | undefined,
    riders: riders.length > 0 ? riders.slice(0, LIMITS.riders) : undefined,
    shaky: marks(base?.shaky, mine.shaky, theirs.shaky),
    setAside: marks(base?.setAside, mine.setAside, theirs.setAside),
    ancestors: ancestors.length > 0 ? ancestors : undefined,
    parent: mine.parent ?? theirs.parent,
  }
}

/** What the names of riders begin with in a list of changes. */
const RIDER = 'rider.'

const ridersById = ({ riders = [] }: Ride): Record<string, Rider> => Object.fromEntries(riders.map((rider) => [RIDER + rider.id, rider]))

function marks(base: readonly string[] = [], mine: readonly string[] = [], theirs: readonly string[] = []): string[] | undefined {
  const old = new Set(base)
  const [ours, others] = [new Set(mine), new Set(theirs)]
  const kept = [...new Set([...mine, ...theirs])].filter((mark) => (ours.has(mark) && others.has(mark)) || !old.has(mark))
  return kept.length > 0 ? kept : undefined
}
