import type { Finding } from '#engine/report.ts'
import type { Block } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import { isOutOfSaddle } from '#plan/posture.ts'
import { type Said, say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, type Noticed } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Hands at the ends belong to standing climbs, hands at the centre to easy seated riding. */
export function handsForPosture(facts: Facts): Finding[] {
  return eachBlock(facts, ({ block, cadence }) => {
    if (cadence.kind === 'still') return undefined
    const { posture, hands } = block
    if (posture === 'seated' && hands === 'ends')
      return wide(block, 'warning', say('checksRiding.endsSeated', { block: quotedItem(block) }))
    if (isOutOfSaddle(block) && hands === 'centre')
      return wide(block, 'hint', say('checksRiding.centerStanding', { block: quotedItem(block) }))
    return undefined
  })
}

function wide(block: Block, severity: Finding['severity'], text: Said): Noticed {
  const fixes = [
    blockFix(block, say('checksRiding.handsWide'), say('checksRiding.setHandsWide', { block: quotedItem(block) }), { hands: 'wide' }),
  ]
  return { rule: 'handsForPosture', severity, text, why: COMMON_PRACTICE, fixes }
}
