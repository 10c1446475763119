import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { copyBlock, type NewId, rememberedIds } from '#plan/copies.ts'
import { editSection, withItems } from '#plan/edits.ts'
import type { Block, Ride } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { findSet } from '#plan/places.ts'
import { playedOut } from '#plan/playedOut.ts'
import { say } from '#words/said.ts'

/**
 * Plays a set out into single blocks, round by round, with what its rounds add written into
 * each block's own call: the ride stays the same to the second and to the step. The first
 * round keeps its ids.
 */
export function ungroupSet(ride: Ride, { setId, newId }: { setId: string; newId: NewId }): Command {
  const freshIds = rememberedIds(newId)
  const set = findSet(ride, setId)?.set
  const label = set
    ? say('commands.expanded', { name: itemName(set), count: set.rounds * set.parts.length })
    : say('commands.nothingTo', { verb: 'expand' })
  return makeCommand(label, (before) => {
    const place = findSet(before, setId)
    if (!place) return before
    const blocks = copied(playedOut(place.set), freshIds())
    return editSection(before, place.section.id, (section) => withItems(section, section.blocks.toSpliced(place.index, 1, ...blocks)))
  })
}

const copied = (rounds: readonly (readonly Block[])[], newId: NewId): Block[] =>
  rounds.flatMap((round, before) => (before === 0 ? round : round.map((block) => copyBlock(block, newId))))
