import { plainMove } from '#engine/cadence/moves.ts'
import type { Finding, Fix } from '#engine/report.ts'
import type { Block } from '#plan/model.ts'
import type { Facts } from './facts.ts'
import { eachBlock, inQuotes } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

const WHY = 'this ride’s own list of moves to avoid'

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
    const text = `${inQuotes(block)} has “${first.name}”, which this room does not do; ${first.offers.join(', or ')}.`
    return { rule: 'avoidedMoves', severity: 'warning', text, why: WHY, amount: all.length, fixes: first.fixes }
  })
}

interface Found {
  name: string
  /** What the fixes do, in words. */
  offers: string[]
  fixes: Fix[]
}

/** Terrain “jumps” with no move of its own says the same as the move. */
function jumping(block: Block, avoided: ReadonlySet<string>): Found | undefined {
  if (block.terrain !== 'jumps' || block.move || !avoided.has('jump')) return undefined
  const hill = blockFix(block, 'Make it a seated hill', `Made ${inQuotes(block)} a seated hill`, { terrain: 'hill', posture: 'seated' })
  return { name: 'jumps', offers: ['make it a seated hill'], fixes: [hill] }
}

function hovering(block: Block, avoided: ReadonlySet<string>): Found | undefined {
  if (block.posture !== 'hovering' || !(avoided.has('hovering') || avoided.has('hover'))) return undefined
  const stand = blockFix(block, 'Ride it standing', `Put ${inQuotes(block)} to standing`, { posture: 'standing' })
  return { name: 'hovering', offers: ['ride it standing'], fixes: [stand] }
}

function usedMove(block: Block, avoided: ReadonlySet<string>): Found | undefined {
  const name = block.move?.name
  if (name === undefined || !avoided.has(plainMove(name))) return undefined
  const terrain = block.terrain === 'jumps' ? { terrain: 'hill' as const } : {}
  const without = blockFix(block, `Leave “${name}” out`, `Left ${name} out of ${inQuotes(block)}`, { move: undefined, ...terrain })
  const other = INSTEAD[block.posture].find((each) => !avoided.has(plainMove(each)) && plainMove(each) !== plainMove(name))
  if (other === undefined) return { name, offers: ['ride it without'], fixes: [without] }
  const move = { name: other, counts: block.move!.counts }
  const instead = blockFix(block, `Make it “${other}”`, `Made the move of ${inQuotes(block)} ${other}`, { move, ...terrain })
  return { name, offers: ['ride it without', `take ${other} on the same counts`], fixes: [without, instead] }
}
