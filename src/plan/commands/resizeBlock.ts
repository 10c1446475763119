import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editBlock } from '#plan/edits.ts'
import type { Length, Ride } from '#plan/model.ts'
import { itemName, lengthText } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import { amountOf, lengthFor } from '#plan/remeasure.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { say, type Text } from '#words/said.ts'

/** Gives a block (a part of a set too) another length: whole counts or whole seconds as its section measures, at least one. */
export function resizeBlock(ride: Ride, { blockId, length }: { blockId: string; length: Length }): Command {
  return makeCommand(labelOf(ride, blockId, length), (before) =>
    editBlock(before, blockId, (block, section) => {
      const next = lengthFor(section, length)
      return sameLength(block.length, next) ? block : { ...block, length: next }
    }),
  )
}

const sameLength = (a: Length, b: Length): boolean => 'counts' in a === 'counts' in b && amountOf(a) === amountOf(b)

function labelOf(ride: Ride, blockId: string, length: Length): Text {
  const place = findBlock(ride, blockId)
  if (!place) return say('commands.nothingTo', { verb: 'change' })
  const next = lengthFor(place.section, length)
  const isShorter = amountOf(next) < amountOf(place.block.length)
  return say(isShorter ? 'commands.shortened' : 'commands.lengthened', {
    name: itemName(place.block),
    length: lengthText(next, eightOf(place.section.song?.grid)),
  })
}
