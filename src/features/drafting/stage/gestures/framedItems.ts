import type { PlayedBlock } from '#engine/played.ts'
import type { Stretch } from '#units/units.ts'

/**
 * The items of which a frame touches any block, in the order of the ride: single blocks and whole sets, or parts of a set
 * where all that is touched are some of its parts. What is a set as soon as anything else is touched as well, so that all of
 * it can be moved, copied, and deleted together.
 */
export function framedItems(blocks: readonly PlayedBlock[], frame: Stretch): string[] {
  const touched = blocks.filter(({ from, to }) => from < frame.to && to > frame.from)
  const items = new Set(touched.map(({ block, set }) => set?.set.id ?? block.id))
  const parts = new Set(touched.map(({ block }) => block.id))
  const set = touched[0]?.set?.set
  if (!set || items.size > 1) return [...items]
  return parts.size === set.parts.length ? [set.id] : set.parts.filter(({ id }) => parts.has(id)).map(({ id }) => id)
}
