import { fix } from '#engine/findings/finding.ts'
import type { Fix } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Block, Ride } from '#plan/model.ts'
import type { Said } from '#words/said.ts'

/** Replaces fields of a block; a field given as undefined is taken out. */
export function blockFix({ id }: Block, label: Said, done: Said, patch: Partial<Block>): Fix {
  return fix(label, done, (ride) => patchOf(ride, id, patch))
}

function patchOf(ride: Ride, blockId: string, patch: Partial<Block>): Ride {
  return editBlock(ride, blockId, (block) => {
    const next = { ...block, ...patch }
    for (const key of Object.keys(patch) as (keyof Block)[]) if (next[key] === undefined) delete next[key]
    return next
  })
}
