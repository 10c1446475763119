import { holdsOf, imbalanceOf, type Sides } from '#engine/cadence/balanceSides.ts'
import { otherFoot } from '#engine/cadence/trackFeet.ts'
import type { Finding, Fix } from '#engine/report.ts'
import type { Placed } from '#engine/timeline/layTimeline.ts'
import type { Block, Move } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, ofRide } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Moves held clearly longer on one side than on the other over the class. */
export function holdBalance(facts: Facts): Finding[] {
  const { balance, rules } = facts
  const { right, left } = balance.holdSeconds
  const imbalance = imbalanceOf({ right, left }, rules.holdsSilentBelow)
  if (imbalance === null || imbalance <= rules.balanceHint) return []
  const [more, less] = right > left ? (['right', 'left'] as const) : (['left', 'right'] as const)
  const text = say('checksRide.holdBalance', { more, most: balance.holdSeconds[more], less, least: balance.holdSeconds[less] })
  const severity = imbalance > rules.balanceWarning ? 'warning' : 'hint'
  const fixes = evened(facts, more, imbalance)
  return [ofRide({ rule: 'holdBalance', severity, text, why: COMMON_PRACTICE, amount: imbalance, fixes })]
}

/** A change of one block's move, and how uneven it leaves the class. */
interface Change {
  move: Move
  block: Block
  imbalance: number
}

/** The one block that evens the class out best by turning about, and the one that does by the other side. */
function evened(facts: Facts, side: 'right' | 'left', imbalance: number): Fix[] {
  const held = blocksHeld(facts, side)
  const best = (change: (move: Move, block: Block) => Move | undefined): Change | undefined => {
    const all = held.flatMap(({ block, times }) => {
      const move = change(block.move!, block)
      return move ? [{ move, block, imbalance: imbalanceWith(facts, times, move) }] : []
    })
    return all.filter((one) => one.imbalance < imbalance).sort((a, b) => a.imbalance - b.imbalance)[0]
  }
  const alternate = best((move, { length }) => {
    if (move.then !== undefined) return undefined
    // By the clock sides are switched halfway.
    const turn = 'counts' in length ? Math.min(move.counts, length.counts / 2) : move.counts
    // biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
    return Number.isInteger(turn) ? { ...move, counts: turn, then: 'alternate' } : undefined
  })
  const other = best((move) => ({ ...move, side: otherFoot(side) }))
  return [...(alternate ? [alternateFix(alternate)] : []), ...(other ? [otherSideFix(other, otherFoot(side))] : [])]
}

function alternateFix({ block, move }: Change): Fix {
  const here = { block: quotedItem(block) }
  return blockFix(block, say('checksRide.alternate', here), say('checksRide.alternated', here), { move })
}

function otherSideFix({ block, move }: Change, side: 'right' | 'left'): Fix {
  const there = { block: quotedItem(block), side }
  return blockFix(block, say('checksRide.otherSide', there), say('checksRide.wentOtherSide', there), { move })
}

/** The blocks that start a hold on a side, each with every time it is played. */
function blocksHeld({ ride, timeline }: Facts, side: 'right' | 'left'): { block: Block; times: Placed[] }[] {
  const held = new Map<string, { block: Block; times: Placed[] }>()
  for (const played of timeline.blocks) {
    if (played.rideTo <= played.rideFrom || played.block.move?.side !== side || sum(holdsOf(played, ride.sections[played.section]!)) === 0)
      continue
    const known = held.get(played.block.id)
    if (known) known.times.push(played)
    else held.set(played.block.id, { block: played.block, times: [played] })
  }
  return [...held.values()]
}

function imbalanceWith({ ride, balance, rules }: Facts, times: readonly Placed[], move: Move): number {
  const { right, left } = { ...balance.holdSeconds }
  const sides = { right, left }
  for (const played of times) {
    const section = ride.sections[played.section]!
    const [was, is] = [holdsOf(played, section), holdsOf({ ...played, block: { ...played.block, move } }, section)]
    sides.right += is.right - was.right
    sides.left += is.left - was.left
  }
  return imbalanceOf(sides, rules.holdsSilentBelow) ?? 0
}

const sum = ({ right, left }: Sides): Seconds => right + left
