import type { Finding } from '#engine/report.ts'
import type { Block } from '#plan/model.ts'
import { isOutOfSaddle } from '#plan/posture.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes, type Noticed } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Hands at the ends belong to standing climbs, hands at the centre to easy seated riding. */
export function handsForPosture(facts: Facts): Finding[] {
  return eachBlock(facts, ({ block, cadence }) => {
    if (cadence.kind === 'still') return undefined
    const { posture, hands } = block
    if (posture === 'seated' && hands === 'ends')
      return wide(block, 'warning', `${inQuotes(block)} is seated with hands at the ends; that reach is for standing climbs.`)
    if (isOutOfSaddle(block) && hands === 'centre')
      return wide(block, 'hint', `${inQuotes(block)} is out of the saddle with hands at the centre; wide is steadier.`)
    return undefined
  })
}

function wide(block: Block, severity: Finding['severity'], text: string): Noticed {
  const fixes = [blockFix(block, 'Hands wide', `Set ${inQuotes(block)} to hands wide`, { hands: 'wide' })]
  return { rule: 'handsForPosture', severity, text, why: COMMON_PRACTICE, fixes }
}
