import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE } from '#engine/findings/finding.ts'
import { blockFix } from '#engine/findings/fixes/blockFix.ts'
import { hasNoEnd } from '#engine/findings/hasNoEnd.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'

/** Sides held this differently are noticed. */
const SIDES_APART = 5

/** The ending off the pedals is planned like any block: legs still, wheel stopped, both sides as long. */
export function endsOffPedals(facts: Facts): Finding[] {
  const last = facts.blocks.findLast(({ from, to }) => to > from)
  if (!last || hasNoEnd(facts)) return []
  return [...stillness(facts, last), ...sides(facts, last)]
}

function stillness(facts: Facts, last: PlayedBlock): Finding[] {
  if (last.cadence.kind === 'still') return []
  const { block } = last
  const here = { block: quotedItem(block) }
  const text = say('checksCues.endsOnPedals', here)
  const stop =
    block.terrain === 'stretch'
      ? blockFix(block, say('checksCues.stopWheel'), say('checksCues.stoppedWheel', here), { cadence: 'legsStill' })
      : undefined
  return [atBlock(facts, last.index, { rule: 'endsOffPedals', severity: 'hint', text, why: COMMON_PRACTICE, fixes: [stop] })]
}

function sides(facts: Facts, last: PlayedBlock): Finding[] {
  const { right, left } = stretchSeconds(facts)
  const apart = Math.abs(right - left)
  if (apart <= SIDES_APART) return []
  const [longer, shorter] = right > left ? (['right', 'left'] as const) : (['left', 'right'] as const)
  const text = say('checksCues.stretchSides', { longer, most: Math.max(right, left), shorter, least: Math.min(right, left) })
  return [atBlock(facts, last.index, { rule: 'stretchSides', severity: 'hint', text, why: COMMON_PRACTICE, amount: apart })]
}

/** Seconds on each side in the stretches with the legs still. A move that alternates takes half of each. */
function stretchSeconds({ blocks }: Facts): { right: number; left: number } {
  const held = { right: 0, left: 0 }
  for (const { block, cadence, from, to } of blocks) {
    if (cadence.kind !== 'still' || !block.move?.side || block.move.then === 'alternate') continue
    held[block.move.side] += to - from
  }
  return held
}
