import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editBlocksOf, editSections, sameValue } from '#plan/edits.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { say, type Text } from '#words/said.ts'

/**
 * One cue of a block as it was written: put where its block has one of that id, else after the others. A cue without words
 * goes, unless it is a count-in, which needs none.
 */
export function writeCue(ride: Ride, { blockId, cue: written }: { blockId: string; cue: Cue }): Command {
  const cue = { ...written, text: written.text.trim() }
  const isNothing = cue.text === '' && cue.moment !== 'countIn'
  return makeCommand(labelOf(findBlock(ride, blockId)?.block.cues ?? [], cue, isNothing), (before) =>
    editSections(before, (section) =>
      editBlocksOf(section, (block) => {
        if (block.id !== blockId) return block
        const at = block.cues.findIndex(({ id }) => id === cue.id)
        if (at === -1) return isNothing ? block : { ...block, cues: [...block.cues, cue] }
        if (isNothing) return { ...block, cues: block.cues.toSpliced(at, 1) }
        return sameValue(block.cues[at], cue) ? block : { ...block, cues: block.cues.with(at, cue) }
      }),
    ),
  )
}

/** Takes a cue out of its block, a count-in too. */
export const removeCue = (ride: Ride, { blockId, cueId }: { blockId: string; cueId: string }): Command =>
  makeCommand(removed(findBlock(ride, blockId)?.block.cues.find(({ id }) => id === cueId)?.text ?? ''), (before) =>
    editSections(before, (section) =>
      editBlocksOf(section, (block) => {
        if (block.id !== blockId || !block.cues.some(({ id }) => id === cueId)) return block
        return { ...block, cues: block.cues.filter(({ id }) => id !== cueId) }
      }),
    ),
  )

function labelOf(cues: readonly Cue[], cue: Cue, isNothing: boolean): Text {
  const held = cues.find(({ id }) => id === cue.id)
  if (held && isNothing) return removed(held.text)
  if (held && held.text.trim() === cue.text) return cue.text === '' ? say('cueLine.movedCountIn') : say('cueLine.moved', { text: cue.text })
  if (held) return say('cueLine.changed', { text: cue.text === '' ? held.text : cue.text })
  return cue.text === '' ? say('cueLine.addedCountIn') : say('commands.addedCue', { text: cue.text })
}

const removed = (text: string): Text => (text.trim() === '' ? say('cueLine.removedCountIn') : say('cueLine.removed', { text }))
