import type { Finding } from '#engine/report.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Hands at the ends belong to standing climbs, hands at the centre to easy seated riding. */
export function handsForPosture(facts: Facts): Finding[] {
  return eachBlock(facts, ({ block }) => {
    const { posture, hands } = block
    const fixes = [blockFix(block, 'Hands wide', `Set ${inQuotes(block)} to hands wide`, { hands: 'wide' })]
    const common = { rule: 'handsForPosture', why: COMMON_PRACTICE, fixes }
    if (posture === 'seated' && hands === 'ends') {
      const text = `${inQuotes(block)} is seated with hands at the ends; that reach is for standing climbs.`
      return { ...common, severity: 'warning', text }
    }
    if ((posture === 'standing' || posture === 'hovering') && hands === 'centre') {
      return { ...common, severity: 'hint', text: `${inQuotes(block)} is out of the saddle with hands at the centre; wide is steadier.` }
    }
    return undefined
  })
}
