import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { type NewId, rememberedIds } from '#plan/copies.ts'
import { spliceBlocks } from '#plan/edits.ts'
import { firstHalf, ofKind, secondHalf } from '#plan/halves.ts'
import type { Ride } from '#plan/model.ts'
import { itemName, lengthText } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Cuts a block in two, `at` whole counts or seconds from its start. The second half goes on
 * as the first ends: resistance kept, ramps cut where they stand, an alternating move on
 * the side it has come to. Cues, notes, water and a change of foot stay with the first.
 * Nothing happens at or beyond an end.
 */
export function splitBlock(ride: Ride, { blockId, at, newId }: { blockId: string; at: number; newId: NewId }): Command {
  const freshIds = rememberedIds(newId)
  return makeCommand(labelOf(ride, blockId, at), (before) => {
    const place = findBlock(before, blockId)
    const cut = Math.round(at)
    if (!place || !(cut > 0 && cut < amountOf(place.block.length))) return before
    return spliceBlocks(before, place, 1, firstHalf(place.block, cut), secondHalf(place.block, cut, freshIds()()))
  })
}

function labelOf(ride: Ride, blockId: string, at: number): Text {
  const place = findBlock(ride, blockId)
  if (!place) return say('commands.nothingTo', { verb: 'split' })
  const length = lengthText(ofKind(place.block.length, Math.round(at)), eightOf(place.section.song?.grid))
  return say('commands.split', { name: itemName(place.block), length })
}
