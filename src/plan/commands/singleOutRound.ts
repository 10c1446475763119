import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { copyBlock, type NewId, rememberedIds } from '#plan/copies.ts'
import { editSection, sameValue, withItems } from '#plan/edits.ts'
import type { Block, Item, Ride, SetBlock } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { findSet } from '#plan/places.ts'
import { playedOut } from '#plan/playedOut.ts'
import { say } from '#words/said.ts'

/** A command, and the ids the parts of the round then have, in their order. */
interface SingledOut extends Command {
  blockIds: readonly string[]
}

/**
 * Takes one round out of a set, so that it can be changed alone: the rounds before it stay a set, the round becomes blocks
 * of its own, and the rounds after it are a set again. The ride stays the same to the second and to the step; rounds that
 * no set can say any more, since what they add builds on the round before, and single rounds become blocks as well.
 * The first rounds keep their ids. A set of one round, or a round it has not, changes nothing.
 *
 * @param round from 1
 */
export function singleOutRound(ride: Ride, { setId, round, newId }: { setId: string; round: number; newId: NewId }): SingledOut {
  const set = findSet(ride, setId)?.set
  const parts = set?.parts ?? []
  const blockIds = round === 1 ? parts.map(({ id }) => id) : parts.map(() => newId())
  const freshIds = rememberedIds(newId)
  const label = set ? say('many.singledOut', { round, name: itemName(set) }) : say('commands.nothingTo', { verb: 'expand' })
  const command = makeCommand(label, (before) => {
    const place = findSet(before, setId)
    if (!place || place.set.rounds < 2 || !(round >= 1 && round <= place.set.rounds)) return before
    const items = piecesOf(place.set, round, blockIds, freshIds())
    return editSection(before, place.section.id, (section) => withItems(section, section.blocks.toSpliced(place.index, 1, ...items)))
  })
  return { ...command, blockIds }
}

function piecesOf(set: SetBlock, round: number, blockIds: readonly string[], newId: NewId): Item[] {
  const rounds = playedOut(set)
  const before = round > 2 ? [{ ...set, rounds: round - 1 }] : rounds.slice(0, round - 1).flat()
  const alone = rounds[round - 1]!.map((block, i) => (round === 1 ? block : { ...copyBlock(block, newId), id: blockIds[i]! }))
  return [...before, ...alone, ...laterRounds(set, rounds.slice(round), round > 2 ? newId() : set.id, newId)]
}

/** Rounds as a set again where one says the very same of them, else as blocks; with ids of their own. */
function laterRounds(set: SetBlock, rounds: readonly (readonly Block[])[], id: string, newId: NewId): Item[] {
  const [first] = rounds
  if (!first) return []
  const rest: SetBlock = { ...set, id, rounds: rounds.length, parts: first }
  const same = rounds.length > 1 && sameValue(playedOut(rest), rounds)
  if (!same) return rounds.flatMap((round) => round.map((block) => copyBlock(block, newId)))
  return [{ ...rest, parts: first.map((block) => copyBlock(block, newId)) }]
}
