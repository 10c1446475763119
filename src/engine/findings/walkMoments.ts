import type { Finding } from '#engine/report.ts'
import { formatDuration } from '#units/formatDuration.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Moments for walking among the riders: long enough, and riders seated. */
export function walkMoments(facts: Facts): Finding[] {
  const least = facts.rules.walkSeconds
  return eachBlock(facts, ({ block, from, to }) => {
    if (!block.walk) return undefined
    const here = inQuotes(block)
    const stay = blockFix(block, 'Stay on the bike', `Stayed on the bike in ${here}`, { walk: undefined })
    const common = { rule: 'walkMoment', severity: 'hint', why: COMMON_PRACTICE } as const
    if (block.posture !== 'seated') {
      return { ...common, text: `Walking the room in ${here} leaves riders standing; a seated block suits it.`, fixes: [stay] }
    }
    if (to - from >= least - 1e-6) return undefined
    const text = `${here} lasts ${formatDuration(to - from)}; walking the room takes ${formatDuration(least)}.`
    return { ...common, text, fixes: [stay] }
  })
}
