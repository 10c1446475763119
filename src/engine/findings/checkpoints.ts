import type { Finding } from '#engine/report.ts'
import { formatSettingRange, formatSignedSetting } from '#units/formatSetting.ts'
import type { KnobSteps } from '#units/units.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, eachBlock, inQuotes } from './finding.ts'
import { resistanceFix } from './fixes/resistanceFix.ts'

/** "You should be at five to six", where the calls lead somewhere else. */
export function checkpoints(facts: Facts): Finding[] {
  const { bike } = facts.ride
  const said = (from: KnobSteps, to: KnobSteps): string => formatSettingRange(from, to, bike.stepsPerUnit)
  return eachBlock(facts, ({ index, block, ledger: { after, checkpoint } }) => {
    if (!checkpoint) return undefined
    const { from, to } = checkpoint
    const here = inQuotes(block)
    if (after.high < from || after.low > to) {
      const repair = checkpointRepair(after.nominal, checkpoint)
      return {
        rule: 'checkpointMissed',
        severity: 'problem',
        text: `${here} says riders should be at ${said(from, to)}, but the calls lead to ${said(after.low, after.high)}: the change misses by ${formatSignedSetting(repair, bike.stepsPerUnit)}.`,
        why: ARITHMETIC,
        amount: Math.abs(repair),
        fixes: [resistanceFix(facts, index, after.nominal + repair)],
      }
    }
    if (after.low >= from && after.high <= to) return undefined
    return {
      rule: 'checkpointLoose',
      severity: 'hint',
      text: `${here} says riders should be at ${said(from, to)}; the calls leave them anywhere from ${said(after.low, after.low)} to ${said(after.high, after.high)}.`,
      why: ARITHMETIC,
    }
  })
}

/** The least whole steps that bring a nominal value inside a checkpoint; 0 inside it. */
function checkpointRepair(nominal: KnobSteps, { from, to }: { from: KnobSteps; to: KnobSteps }): KnobSteps {
  if (nominal < from) return from - nominal
  return nominal > to ? to - nominal : 0
}
