import type { Ride } from '#plan/model.ts'
import { fingerprint } from './fingerprint.ts'
import { oldestVersion } from './oldestVersion.ts'

/**
 * A short name of exactly this content: equal for rides that say the same, whatever the
 * order of their fields, and different for any two a person will ever make. Not a seal
 * against forgery. A version of the document that changes nothing in it leaves it its name. 16 hexadecimal digits; linear in the size of the ride.
 */
export const revisionOf = (ride: Ride): string => fingerprint(canonical({ ...ride, schema: oldestVersion(ride) }))

/** JSON with the fields of every object in order of their names and fields without a value left out. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join()}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null'
  const fields = Object.entries(value).filter(([, held]) => held !== undefined)
  return `{${fields
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, held]) => `${JSON.stringify(name)}:${canonical(held)}`)
    .join()}}`
}
