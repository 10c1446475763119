import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { patched } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import { say, type Text } from '#words/said.ts'

/** Marks a block as shaky: to be rehearsed again. What was marked longest ago is let go when the list is full. */
export function markShaky(ride: Ride, { blockId }: { blockId: string }): Command {
  return makeCommand(labelOf(ride, blockId, 'commands.needsPractice'), (before) => {
    const { shaky = [] } = before
    if (shaky.includes(blockId) || !findBlock(before, blockId)) return before
    return { ...before, shaky: [...shaky, blockId].slice(-LIMITS.shaky) }
  })
}

/** Takes the mark away again: the block sits. */
export function unmarkShaky(ride: Ride, { blockId }: { blockId: string }): Command {
  return makeCommand(labelOf(ride, blockId, 'commands.gotIt'), (before) => {
    const left = before.shaky?.filter((id) => id !== blockId)
    return left?.length === before.shaky?.length ? before : patched(before, { shaky: left?.length ? left : undefined })
  })
}

function labelOf(ride: Ride, blockId: string, path: 'commands.needsPractice' | 'commands.gotIt'): Text {
  const block = findBlock(ride, blockId)?.block
  return block ? say(path, { name: itemName(block) }) : say('commands.nothingTo', { verb: 'change' })
}
