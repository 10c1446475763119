import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editBlocksOf, editSections, patched, sameValue } from '#plan/edits.ts'
import type { Block, Ride } from '#plan/model.ts'
import { itemsText } from '#plan/names.ts'
import { tidyBlock } from '#plan/tidyBlock.ts'
import { say, type Text } from '#words/said.ts'

/** Fields of a block to replace; a field given as undefined is taken out. */
export type BlockPatch = Partial<Omit<Block, 'id'>>

/**
 * Replaces fields of blocks, parts of sets included. Numbers out of range are clamped,
 * ranges put in order, the length made whole; a value the document cannot hold changes
 * nothing. A name that says the counts of its move, “jumps on 8”, follows them.
 */
export function patchBlocks(ride: Ride, { blockIds, patch }: { blockIds: readonly string[]; patch: BlockPatch }): Command {
  return patchEach(
    ride,
    blockIds.map((blockId) => ({ blockId, patch })),
  )
}

/** The same with fields of its own for each block, as where only one end of each ramp changes; as one step. */
export function patchEach(ride: Ride, patches: readonly { blockId: string; patch: BlockPatch }[]): Command {
  const patchOf = new Map(patches.map(({ blockId, patch }) => [blockId, patch]))
  const label = labelOf(ride, [...patchOf.keys()], Object.assign({}, ...patches.map(({ patch }) => patch)))
  return makeCommand(label, (before) =>
    editSections(before, (section) =>
      editBlocksOf(section, (block) => {
        const patch = patchOf.get(block.id)
        if (!patch) return block
        const next = tidyBlock(patched(block, { ...patch, ...renamed(block, patch), id: block.id }), section)
        return sameValue(next, block) ? block : next
      }),
    ),
  )
}

/** The name that goes with other counts of the same move, where the name says them. */
function renamed({ label, move }: Block, patch: BlockPatch): Pick<BlockPatch, 'label'> {
  const counts = patch.move?.counts
  if (label === undefined || !move || counts === undefined || 'label' in patch || patch.move?.name !== move.name) return {}
  return { label: label.replace(new RegExp(`\\bon ${move.counts}\\b`), `on ${counts}`) }
}

function labelOf(ride: Ride, ids: readonly string[], patch: BlockPatch): Text {
  const name = itemsText(ride, ids)
  if (ids.length === 1 && Object.keys(patch).join() === 'label' && patch.label) return say('commands.renamed', { name, to: patch.label })
  const fields = (Object.keys(patch) as (keyof BlockPatch)[]).map((field) => say('commands.blockField', { field }))
  return say('commands.changed', { fields, name })
}
