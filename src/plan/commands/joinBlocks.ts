import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { spliceBlocks } from '#plan/edits.ts'
import { type Block, isSet, type Length, type Ride } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Joins a block with the one after it in the same section or set. The first one's
 * instruction goes on through both; what is said of the second's form and story stays,
 * what announced the change that is gone goes. An effort that ran on without a step runs
 * on. Nothing happens before a set, or at the end.
 */
export function joinBlocks(ride: Ride, { blockId }: { blockId: string }): Command {
  return makeCommand(labelOf(ride, blockId), (before) => {
    const pair = pairAt(before, blockId)
    return pair ? spliceBlocks(before, pair.place, 2, joined(pair.place.block, pair.next)) : before
  })
}

function pairAt(ride: Ride, blockId: string) {
  const place = findBlock(ride, blockId)
  const next = place?.list[place.index + 1]
  return place && next && !isSet(next) ? { place, next } : undefined
}

function joined(first: Block, second: Block): Block {
  const { minEights, maxEights, ...kept } = first
  const notes = [first.notes, second.notes].filter((text) => text).join('\n')
  const runsOn = first.effort.to === second.effort.from
  return {
    ...kept,
    length: summed(first.length, second.length),
    effort: runsOn ? { from: first.effort.from, to: second.effort.to } : first.effort,
    ...(notes && { notes }),
    cues: [...first.cues, ...second.cues.filter(({ moment }) => moment === 'form' || moment === 'story')],
  }
}

const summed = (a: Length, b: Length): Length => ('counts' in a ? { counts: a.counts + amountOf(b) } : { seconds: a.seconds + amountOf(b) })

function labelOf(ride: Ride, blockId: string): Text {
  const pair = pairAt(ride, blockId)
  return pair
    ? say('commands.merged', { name: itemName(pair.place.block), next: itemName(pair.next) })
    : say('commands.nothingTo', { verb: 'merge' })
}
