import { formatTotal } from '#engine/ledger/sayCall.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { checkpointOf, narrowed } from '#plan/ledger/applyCall.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Bike, Change, Keep, Total } from '#plan/model.ts'
import { formatSetting, formatSettingRange, formatSignedSetting } from '#units/formatSetting.ts'
import type { KnobSteps, StepRange } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, eachBlock, inQuotes, playsOf } from './finding.ts'
import { callFix, type Excess, resistanceFix } from './fixes/resistanceFix.ts'
import { totalRoom } from './totalRoom.ts'

/**
 * "You should be at five to six", where the calls lead somewhere else. An end of the calls that is open
 * is what a checkpoint closes, so only a known one can lie outside it.
 */
export function checkpoints(facts: Facts): Finding[] {
  const { bike } = facts.ride
  const { lines, limits } = facts.ledger
  return eachBlock(facts, (played) => {
    const { checkpoint } = played.ledger
    if (!checkpoint) return undefined
    const { reached } = lines[played.index]!
    const said = `${inQuotes(played.block)} says riders should be at ${formatSettingRange(checkpoint, bike.stepsPerUnit)}`
    if (!narrowed(reached, checkpoint, limits)) {
      const repair = checkpointRepair(reached.nominal, checkpoint)
      const missing = played.block.resistance.kind === 'change' ? 'the change misses' : 'they miss'
      return {
        rule: 'checkpointMissed',
        severity: 'problem',
        text: `${said}, but the calls lead to ${formatTotal(reached, bike)}: ${missing} by ${formatSignedSetting(repair, bike.stepsPerUnit)}.`,
        why: ARITHMETIC,
        amount: Math.abs(repair),
        fixes: () => [callRepair(facts, played, reached.nominal + repair, checkpoint), rangeRepair(facts, played)],
      }
    }
    const isBelow = reached.low !== null && reached.low < checkpoint.from
    const isAbove = reached.high !== null && !checkpoint.orMore && reached.high > checkpoint.to
    if (!isBelow && !isAbove) return undefined
    return {
      rule: 'checkpointLoose',
      severity: 'hint',
      text: `${said}; the calls leave them ${anywhere(reached, bike)}.`,
      why: ARITHMETIC,
    }
  })
}

/** "anywhere from 1 to 2½", "at 4 or more" */
function anywhere(state: LedgerState, bike: Bike): string {
  const { low, high } = state
  if (low === null || high === null) return `at ${formatTotal(state, bike)}`
  return `anywhere from ${formatSetting(low, bike.stepsPerUnit)} to ${formatSetting(high, bike.stepsPerUnit)}`
}

/** The least whole steps that bring a nominal value inside a checkpoint; 0 inside it. */
function checkpointRepair(nominal: KnobSteps, { from, to, orMore }: StepRange): KnobSteps {
  if (nominal < from) return from - nominal
  return nominal > to && !orMore ? to - nominal : 0
}

/**
 * The last call before riders are told, brought to where they should be: the block's own, or the one that a stay goes on from.
 * Where another rule holds that one back, the stay becomes a change.
 */
function callRepair(facts: Facts, { index, block }: PlayedBlock, target: KnobSteps, checkpoint: StepRange): Fix | undefined {
  const excess: Excess = (_, after, call) => Math.abs(checkpointRepair(after.nominal, (call && checkpointOf(call)) ?? checkpoint))
  const own = () => resistanceFix(facts, index, target, excess)
  if (block.resistance.kind !== 'keep') return own()
  const turned = facts.blocks.slice(0, index).findLast((one) => one.block.resistance.kind !== 'keep')
  if (!turned || totalRoom(facts, turned).most.total < target) return own()
  const fix = resistanceFix(facts, turned.index, target, excess)
  return fix ? { ...fix, label: say('checks.fixIn', { fix: fix.label, block: inQuotes(turned.block) }) } : own()
}

/** The checkpoint brought to where the calls lead, in every round the block is played; whose end is open, to the nominal rider. */
function rangeRepair(facts: Facts, played: PlayedBlock): Fix {
  const stated = played.block.resistance as Keep | Change | Total
  const places = playsOf(facts, played).map(({ index, ledger }) => {
    const { low, nominal, high } = facts.ledger.lines[index]!.reached
    const shift = ledger.checkpoint!.from - stated.checkpoint!.from
    return { low: (low ?? nominal) - shift, high: high === null ? Number.POSITIVE_INFINITY : high - shift }
  })
  const from = Math.min(...places.map(({ low }) => low))
  const to = Math.max(...places.map(({ high }) => high))
  const checkpoint: StepRange = Number.isFinite(to) ? { from, to } : { from, to: from, orMore: true }
  const words = formatSettingRange(checkpoint, facts.ride.bike.stepsPerUnit)
  return callFix(played.block, `Set the checkpoint to ${words}`, `Set the checkpoint of ${inQuotes(played.block)} to ${words}`, {
    ...stated,
    checkpoint,
  })
}
