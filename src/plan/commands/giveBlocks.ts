import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editBlocksOf, editSections, patched } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'
import { itemsText } from '#plan/names.ts'
import { fieldsOfRoles, rolesOf } from '#plan/rolesOf.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Gives blocks to a leader, or the microphone of blocks: a new leader speaks as well, until
 * another is said to. Parts of sets included; ids the ride has not change nothing.
 */
export function giveBlocks(
  ride: Ride,
  { blockIds, leads, speaks }: { blockIds: readonly string[]; leads?: string; speaks?: string },
): Command {
  const chosen = new Set(blockIds)
  const given = leads ?? speaks
  const whom = { name: itemsText(ride, blockIds), leader: nameOf(ride, given) }
  const label = speaks !== undefined && leads === undefined ? say('commands.gaveMicrophoneTo', whom) : say('commands.gaveTo', whom)
  return makeCommand(label, (before) => {
    if (!before.leaders.some(({ id }) => id === given)) return before
    return editSections(before, (section) =>
      editBlocksOf(section, (block) => {
        if (!chosen.has(block.id)) return block
        const had = rolesOf(before, block)
        const lead = leads ?? had.leads
        return patched(block, fieldsOfRoles(before, { leads: lead, speaks: speaks ?? (leads === undefined ? had.speaks : lead) }))
      }),
    )
  })
}

const nameOf = ({ leaders }: Ride, id: string | undefined): Text =>
  leaders.find((leader) => leader.id === id)?.name ?? say('commands.nobody')
