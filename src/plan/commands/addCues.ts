import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editBlocksOf, editSections } from '#plan/edits.ts'
import type { Cue } from '#plan/model.ts'
import { say } from '#words/said.ts'

/** A cue and the block it belongs to. */
export interface CueOfBlock {
  blockId: string
  cue: Cue
}

/** Adds cues after those their blocks have, as one step. */
export function addCues(added: readonly CueOfBlock[]): Command {
  const label =
    added.length === 1 ? say('commands.addedCue', { text: added[0]!.cue.text }) : say('commands.addedCues', { count: added.length })
  return makeCommand(label, (ride) =>
    editSections(ride, (section) =>
      editBlocksOf(section, (block) => {
        const own = added.flatMap(({ blockId, cue }) => (blockId === block.id ? [cue] : []))
        return own.length === 0 ? block : { ...block, cues: [...block.cues, ...own] }
      }),
    ),
  )
}
