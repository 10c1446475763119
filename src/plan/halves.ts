import type { Block, Cadence, Length, Move } from '#plan/model.ts'
import { amountOf } from '#plan/remeasure.ts'

/** A block up to a cut, `cut` whole counts or seconds inside it. The fewest and most eights of the whole say nothing about its halves. */
export function firstHalf(block: Block, cut: number): Block {
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

/** A block from a cut on: it goes on as its first half ends. */
export function secondHalf(block: Block, cut: number, id: string): Block {
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

/** An amount in the measure of a length. */
export const ofKind = (length: Length, amount: number): Length => ('counts' in length ? { counts: amount } : { seconds: amount })

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
