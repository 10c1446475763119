import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editBlock } from '#plan/edits.ts'
import type { Length, Ride } from '#plan/model.ts'
import { nameOfItem } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import { amountOf, lengthFor } from '#plan/remeasure.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { sayLength } from '#plan/words.ts'

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

function labelOf(ride: Ride, blockId: string, length: Length): string {
  const place = findBlock(ride, blockId)
  if (!place) return 'Changed nothing'
  const next = lengthFor(place.section, length)
  const verb = amountOf(next) < amountOf(place.block.length) ? 'Shortened' : 'Lengthened'
  return `${verb} ${nameOfItem(place.block)} to ${sayLength(next, eightOf(place.section.song?.grid))}`
}
