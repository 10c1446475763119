import { type Item, isSet, type Ride } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import { type Limits, limitsOf, startOf } from './limits.ts'
import { playCall, type Standing, standingAt } from './playCall.ts'

/**
 * The total riders enter a place with, in whole steps from the ride's datum: what all calls before it lead to.
 *
 * @param index among the section's blocks and sets; past the last one is the section's end
 */
export function standingBefore(ride: Ride, sectionId: string, index: number): KnobSteps {
  const limits = limitsOf(ride)
  let standing = standingAt(startOf(limits))
  for (const { id, blocks } of ride.sections) {
    for (const item of id === sectionId ? blocks.slice(0, index) : blocks) standing = playItem(item, standing, limits)
    if (id === sectionId) break
  }
  return standing.state.nominal
}

/** Where riders stand after a block, or after all rounds of a set. */
export function playItem(item: Item, from: Standing, limits: Limits): Standing {
  if (!isSet(item)) return playCall(from, item.resistance, undefined, limits).next
  let standing = from
  for (let round = 1; round <= item.rounds; round++)
    for (const { resistance } of item.parts) standing = playCall(standing, resistance, { set: item, round }, limits).next
  return standing
}
