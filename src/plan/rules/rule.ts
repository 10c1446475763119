import type { Wrong } from '#plan/document/wrong.ts'
import type { Block, Ride, Section } from '#plan/model.ts'

/** Where in the document: keys and list positions from the top. */
export type Path = readonly (string | number)[]

/** Something wrong with a value: where, what, and the value where naming it helps. */
export interface Fault {
  path: Path
  wrong: Wrong
  found?: unknown
}

/** Looks at more than one value of a ride whose shape is right. */
export type Rule = (ride: Ride) => Fault[]

/** Every block of the ride, parts of sets among them, with its path and its section. */
export function* eachBlock(ride: Ride): Generator<{ block: Block; path: Path; section: Section }> {
  for (const [s, section] of ride.sections.entries()) {
    for (const [b, item] of section.blocks.entries()) {
      const path = ['sections', s, 'blocks', b]
      if (!('parts' in item)) yield { block: item, path, section }
      else for (const [p, part] of item.parts.entries()) yield { block: part, path: [...path, 'parts', p], section }
    }
  }
}
