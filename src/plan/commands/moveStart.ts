import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { spliceBlocks } from '#plan/edits.ts'
import { type Block, isSet, type Length, type Ride } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { type BlockPlace, findBlock } from '#plan/places.ts'
import { amountOf, lengthFor } from '#plan/remeasure.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Has a block start later, or earlier with a minus, by whole counts or seconds as its section measures: the block right
 * before it in the same section or set is that much longer, it is that much shorter, and nothing else moves. Both keep one
 * count or second at least. Nothing happens where no block stands right before it.
 */
export function moveStart(ride: Ride, { blockId, by }: { blockId: string; by: number }): Command {
  return makeCommand(labelOf(ride, blockId, by), (before) => {
    const place = findBlock(before, blockId)
    const earlier = place && blockBefore(place)
    if (!place || !earlier) return before
    const [first, second] = [lengthFor(place.section, earlier.length), lengthFor(place.section, place.block.length)]
    const most = Math.min(amountOf(second) - 1, Math.max(1 - amountOf(first), Math.round(by)))
    if (!Number.isFinite(most) || most === 0) return before
    const pair = [withLength(earlier, first, most), withLength(place.block, second, -most)]
    return spliceBlocks(before, { ...place, index: place.index - 1 }, 2, ...pair)
  })
}

/** The single block right before one, in the list it stands in. */
export function blockBefore({ list, index }: BlockPlace): Block | undefined {
  const before = list[index - 1]
  return before && !isSet(before) ? before : undefined
}

function withLength(block: Block, length: Length, more: number): Block {
  return { ...block, length: 'counts' in length ? { counts: length.counts + more } : { seconds: length.seconds + more } }
}

function labelOf(ride: Ride, blockId: string, by: number): Text {
  const place = findBlock(ride, blockId)
  const before = place && blockBefore(place)
  if (!place || !before) return say('commands.nothingTo', { verb: 'change' })
  return say(by < 0 ? 'commands.startedEarlier' : 'commands.startedLater', { name: itemName(place.block), before: itemName(before) })
}
