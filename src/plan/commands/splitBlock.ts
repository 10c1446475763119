import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { type NewId, rememberedIds } from '#plan/copies.ts'
import { spliceBlocks } from '#plan/edits.ts'
import type { Block, Cadence, Length, Move, Ride } from '#plan/model.ts'
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

/** The fewest and most eights of the whole say nothing about its halves. */
function firstHalf(block: Block, cut: number): Block {
  const { minEights, maxEights, ...kept } = block
  const share = cut / amountOf(block.length)
  const middle = between(block.effort.from, block.effort.to, share)
  return {
    ...kept,
    length: ofKind(block.length, cut),
    effort: { from: block.effort.from, to: middle },
    ...(block.cadence && { cadence: cadenceUpTo(block.cadence, share) }),
  }
}

function secondHalf(block: Block, cut: number, id: string): Block {
  const { minEights, maxEights, lead, notes, water, ...kept } = block
  const whole = amountOf(block.length)
  const middle = between(block.effort.from, block.effort.to, cut / whole)
  return {
    ...kept,
    id,
    length: ofKind(block.length, whole - cut),
    resistance: { kind: 'keep' },
    effort: { from: middle, to: block.effort.to },
    ...(block.cadence && { cadence: cadenceFrom(block.cadence, cut / whole) }),
    ...(block.move && 'counts' in block.length && { move: moveAfter(block.move, cut) }),
    cues: [],
  }
}

const ofKind = (length: Length, amount: number): Length => ('counts' in length ? { counts: amount } : { seconds: amount })

/** A ramp's value part of the way along, to a tenth. */
const between = (from: number, to: number, share: number): number => Math.round((from + (to - from) * share) * 10) / 10

function cadenceUpTo(cadence: Cadence, share: number): Cadence {
  if (cadence === 'legsStill' || cadence.rampTo === undefined) return cadence
  return { rpm: cadence.rpm, rampTo: Math.round(cadence.rpm + (cadence.rampTo - cadence.rpm) * share) }
}

function cadenceFrom(cadence: Cadence, share: number): Cadence {
  const first = cadenceUpTo(cadence, share)
  if (cadence === 'legsStill' || first === 'legsStill' || first.rampTo === undefined) return cadence
  return { rpm: first.rampTo, rampTo: cadence.rampTo }
}

/** The move as it goes on after some counts: on the other side after an odd number of whole figures. */
function moveAfter(move: Move, counts: number): Move {
  const turned = move.then === 'alternate' && move.side !== undefined && Math.floor(counts / move.counts) % 2 === 1
  return turned ? { ...move, side: move.side === 'left' ? 'right' : 'left' } : move
}

function labelOf(ride: Ride, blockId: string, at: number): Text {
  const place = findBlock(ride, blockId)
  if (!place) return say('commands.nothingTo', { verb: 'split' })
  const length = lengthText(ofKind(place.block.length, Math.round(at)), eightOf(place.section.song?.grid))
  return say('commands.split', { name: itemName(place.block), length })
}
