import { plainMove } from '#engine/cadence/moves.ts'
import type { Finding, Fix } from '#engine/report.ts'
import type { Block } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import { type Said, say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { eachBlock } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

const WHY = say('sources.avoidedMoves')

/** Moves that can stand in for others on the same counts, by posture (common practice); the first one not avoided is offered. */
const INSTEAD: Record<Block['posture'], readonly string[]> = {
  seated: ['shoulder rolls', 'press'],
  standing: ['side lean', 'press'],
  hovering: [],
  offBike: [],
}

/** Blocks that use a move the room does not do, hovering among them, with a way to ride them. */
export function avoidedMoves(facts: Facts): Finding[] {
  const avoided = new Set((facts.ride.avoidMoves ?? []).map(plainMove))
  if (avoided.size === 0) return []
  return eachBlock(facts, ({ block }) => {
    const all = [usedMove(block, avoided), hovering(block, avoided), jumping(block, avoided)].filter((found) => found !== undefined)
    const [first] = all
    if (!first) return undefined
    return { rule: 'avoidedMoves', severity: 'warning', text: first.text, why: WHY, amount: all.length, fixes: first.fixes }
  })
}

interface Found {
  text: Said
  fixes: Fix[]
}

/** Terrain “jumps” with no move of its own says the same as the move. */
function jumping(block: Block, avoided: ReadonlySet<string>): Found | undefined {
  if (block.terrain !== 'jumps' || block.move || !avoided.has('jump')) return undefined
  const here = { block: quotedItem(block) }
  const climb = blockFix(block, say('checksRiding.makeClimb'), say('checksRiding.madeClimb', here), { terrain: 'hill', posture: 'seated' })
  return { text: say('checksRiding.avoidedJumps', here), fixes: [climb] }
}

function hovering(block: Block, avoided: ReadonlySet<string>): Found | undefined {
  if (block.posture !== 'hovering' || !(avoided.has('hovering') || avoided.has('hover'))) return undefined
  const here = { block: quotedItem(block) }
  const stand = blockFix(block, say('checksRiding.rideStanding'), say('checksRiding.madeStanding', here), { posture: 'standing' })
  return { text: say('checksRiding.avoidedHover', here), fixes: [stand] }
}

function usedMove(block: Block, avoided: ReadonlySet<string>): Found | undefined {
  const name = block.move?.name
  if (name === undefined || !avoided.has(plainMove(name))) return undefined
  const terrain = block.terrain === 'jumps' ? { terrain: 'hill' as const } : {}
  const here = quotedItem(block)
  const done = say('checksRiding.leftMoveOut', { block: here, move: name })
  const without = blockFix(block, say('checksRiding.leaveMoveOut', { move: name }), done, { move: undefined, ...terrain })
  const other = INSTEAD[block.posture].find((each) => !avoided.has(plainMove(each)) && plainMove(each) !== plainMove(name))
  const text = say('checksRiding.avoidedMove', { block: here, move: name, instead: other ?? null })
  if (other === undefined) return { text, fixes: [without] }
  const move = { name: other, counts: block.move!.counts }
  const made = say('checksRiding.madeMove', { block: here, move: other })
  const instead = blockFix(block, say('checksRiding.makeMove', { move: other }), made, { move, ...terrain })
  return { text, fixes: [without, instead] }
}
