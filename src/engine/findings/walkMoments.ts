import type { Finding } from '#engine/report.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Moments for walking among the riders: long enough, and riders seated. */
export function walkMoments(facts: Facts): Finding[] {
  const least = facts.rules.walkSeconds
  return eachBlock(facts, ({ block, from, to }) => {
    if (!block.walk) return undefined
    const here = quotedItem(block)
    const stay = blockFix(block, say('checks.stayOnBike'), say('checks.stayedOnBike', { block: here }), { walk: undefined })
    const common = { rule: 'walkMoment', severity: 'hint', why: COMMON_PRACTICE } as const
    if (block.posture !== 'seated') {
      return { ...common, text: say('checksRide.walkStanding', { block: here }), fixes: [stay] }
    }
    if (to - from >= least - 1e-6) return undefined
    const text = say('checksRide.walkShort', { block: here, seconds: to - from, needed: least })
    return { ...common, text, fixes: [stay] }
  })
}
