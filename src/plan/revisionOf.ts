import type { Ride } from '#plan/model.ts'

/**
 * A short name of exactly this content: equal for rides that say the same, whatever the
 * order of their fields, and different for any two a person will ever make. Not a seal
 * against forgery. 16 hexadecimal digits; linear in the size of the ride.
 */
export const revisionOf = (ride: Ride): string => fingerprint(canonical(ride))

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

/** FNV-1a, twice 32 bits with different starts (Fowler, Noll, Vo), over UTF-16 code units. */
export function fingerprint(text: string): string {
  let a = 0x811c9dc5
  let b = 0x050c5d1f
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i)
    a = Math.imul(a ^ unit, 0x01000193)
    b = Math.imul(b ^ unit ^ (i & 0xff), 0x01000193)
  }
  return hex(a) + hex(b)
}

const hex = (word: number): string => (word >>> 0).toString(16).padStart(8, '0')
