import type { Facts } from '#engine/findings/facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes } from '#engine/findings/finding.ts'
import { blockFix } from '#engine/findings/fixes/blockFix.ts'
import type { Finding } from '#engine/report.ts'
import type { Block } from '#plan/model.ts'

/** Standing and hovering without a way to stay in the saddle, where nobody sees who cannot stand. */
export function seatedOption(facts: Facts): Finding[] {
  return eachBlock(facts, ({ block }) => {
    if ((block.posture !== 'standing' && block.posture !== 'hovering') || offersSeat(block)) return undefined
    const text = block.easier ? `${block.easier.text}; or stay seated` : 'stay seated'
    return {
      rule: 'seatedOption',
      severity: 'hint',
      text: `${inQuotes(block)} is ridden out of the saddle and offers no way to stay seated.`,
      why: COMMON_PRACTICE,
      fixes: [blockFix(block, 'Offer it seated', `Offered ${inQuotes(block)} seated`, { easier: { text } })],
    }
  })
}

const SEATED = /\b(?:sit|sits|sitting|seat|seated|saddle)\b/i

const offersSeat = ({ easier }: Block): boolean => easier !== undefined && SEATED.test(easier.text)
