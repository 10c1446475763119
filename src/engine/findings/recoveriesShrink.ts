import { isCatchBreath } from '#engine/recovery/catchBreath.ts'
import type { Bout } from '#engine/recovery/findBouts.ts'
import type { Finding } from '#engine/report.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE } from './finding.ts'

/** Less than a twentieth longer is the same bout to a rider. */
const GROWTH = 1.05

/** Three bouts in a row that grow while the recoveries after them shrink. */
export function recoveriesShrink(facts: Facts): Finding[] {
  const bouts = facts.recovery.bouts.filter((bout) => !isCatchBreath(bout, facts.blocks, facts.rules))
  return bouts.flatMap((third, index) => {
    const [first, second] = [bouts[index - 2], bouts[index - 1]]
    if (!first || !second || !(tightens(first, second) && tightens(second, third))) return []
    const three = [first, second, third]
    const text = say('checksRide.recoveriesShrink', {
      work: three.map(({ workSeconds }) => workSeconds),
      rest: three.map(({ have }) => have),
    })
    return [atBlock(facts, third.fromBlock, { rule: 'recoveriesShrink', severity: 'hint', text, why: COMMON_PRACTICE })]
  })
}

const tightens = (before: Bout, after: Bout): boolean =>
  after.workSeconds > before.workSeconds * GROWTH && after.have * GROWTH < before.have
