import type { PlayedBlock } from '#engine/played.ts'

/** A move and where it is shown first; later uses, standing after seated too, point back to it. */
export interface Showing {
  move: string
  /** Indices into the report's blocks. */
  first: number
  again: number[]
}

/** The moves of the ride in the order they are first shown. */
export function showings(blocks: readonly PlayedBlock[]): Showing[] {
  const found = new Map<string, Showing>()
  for (const { block, index } of blocks) {
    if (block.move === undefined) continue
    const move = block.move.name.trim().toLowerCase()
    const known = found.get(move)
    if (known === undefined) found.set(move, { move: block.move.name, first: index, again: [] })
    else known.again.push(index)
  }
  return [...found.values()]
}
