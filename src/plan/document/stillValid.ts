import * as v from 'valibot'
import type { Ride } from '#plan/model.ts'
import { checkRules } from '#plan/rules/checkRules.ts'
import { LIMITS, rideSchema, sectionSchema } from './schema.ts'

const headSchema = v.omit(rideSchema, ['sections'])

/**
 * Whether a ride made from a valid one is valid too. Only what is another object than
 * before is checked for its shape, so the cost is that of the change; the rules between
 * values run over the whole ride.
 */
export function stillValid(before: Ride, after: Ride): boolean {
  const known = new Set(before.sections)
  const changed = after.sections.filter((section) => !known.has(section))
  return (
    (sameHead(before, after) || v.is(headSchema, after)) &&
    after.sections.length <= LIMITS.sections &&
    changed.every((section) => v.is(sectionSchema, section)) &&
    checkRules(after).length === 0
  )
}

function sameHead(before: Ride, after: Ride): boolean {
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]) as Set<keyof Ride>
  keys.delete('sections')
  return [...keys].every((key) => before[key] === after[key])
}
