import { otherFoot } from '#engine/cadence/trackFeet.ts'
import type { Finding, PlayedBlock } from '#engine/report.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, atBlock, type Noticed, quoted } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Where the lead foot changes by itself, is lost, or does not land on the one. */
export function footOnOne(facts: Facts): Finding[] {
  return facts.blocks.flatMap((played) => {
    const noticed = judge(facts, played)
    return noticed ? [atBlock(facts, played.index, noticed)] : []
  })
}

function judge(facts: Facts, { index, section, block, foot, footSpoken, set }: PlayedBlock): Noticed | undefined {
  const { lost } = facts.footings[index]!
  const before = facts.footings[index - 1]
  // Told once, where the foot is lost; the blocks after it follow.
  if (lost && before?.lost === lost && facts.blocks[index - 1]!.section === section) return undefined
  const here = quoted(facts, index)
  const name = (side: 'left' | 'right') => blockFix(block, `Let the ${side} foot lead`, `Let the ${side} foot lead ${here}`, { lead: side })
  if (lost === 'between') {
    const text = `No foot lands on the one of ${here}: the block before it leaves the feet between two strikes.`
    return { rule: 'noFootOnOne', severity: 'warning', text, why: ARITHMETIC, fixes: [name('right'), name('left')] }
  }
  if (lost === 'offBeat') {
    const text = `The lead foot of ${here} is open: the block before it leaves the beat.`
    return { rule: 'leadOpen', severity: 'hint', text, why: ARITHMETIC, fixes: [name('right'), name('left')] }
  }
  const flipped = before?.flips && facts.blocks[index - 1]!.section === section && foot && foot === otherFoot(before.foot!)
  if (!flipped || footSpoken || block.lead === 'left' || block.lead === 'right') return undefined
  const text = `The ${foot} foot lands on the one of ${here}: ${quoted(facts, index - 1)} has an odd number of strikes.`
  // In a set the other rounds may start on the other foot, so no one name holds.
  const steady = set && set.set.rounds > 1 ? undefined : name(otherFoot(foot))
  return { rule: 'footFlips', severity: 'hint', text, why: ARITHMETIC, fixes: [steady] }
}
