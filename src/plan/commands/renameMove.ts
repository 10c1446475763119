import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editBlocksOf, editSections } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'
import { say } from '#words/said.ts'

/** Whether two moves are the same one: by their names, as they are said. */
const sameMove = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase()

/** Gives a move another name wherever the ride shows it, so that repeats stay linked to their first showing. */
export function renameMove(ride: Ride, { from, to }: { from: string; to: string }): Command {
  const places = ride.sections.flatMap(({ blocks }) => blocks).flatMap((item) => ('parts' in item ? item.parts : [item]))
  const count = places.filter(({ move }) => move && sameMove(move.name, from)).length
  return makeCommand(say('commands.renamedMove', { from, to, count }), (before) =>
    editSections(before, (section) =>
      editBlocksOf(section, (block) =>
        block.move && sameMove(block.move.name, from) && block.move.name !== to ? { ...block, move: { ...block.move, name: to } } : block,
      ),
    ),
  )
}
