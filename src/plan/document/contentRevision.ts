import { shareable } from '#plan/link/shareable.ts'
import type { Ride } from '#plan/model.ts'
import { revisionOf } from './revisionOf.ts'

/**
 * A short name of what a ride says to whoever teaches it: equal for two copies that say the
 * same, whoever keeps them, whatever they are made from and whatever is private to each.
 * 16 hexadecimal digits, as `revisionOf`.
 */
export function contentRevision(ride: Ride): string {
  const { parent: _parent, ancestors: _ancestors, ...content } = shareable(ride)
  return revisionOf({ ...content, id: '' })
}
