import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { checkpointOf, narrowed } from '#plan/ledger/applyCall.ts'
import type { Change, Keep, Total } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import type { KnobSteps, StepRange } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, eachBlock, playsOf } from './finding.ts'
import { callFix, type Excess, resistanceFix } from './fixes/resistanceFix.ts'
import { totalRoom } from './totalRoom.ts'

/**
 * "You should be at five to six", where the calls lead somewhere else. An end of the calls that is open
 * is what a checkpoint closes, so only a known one can lie outside it.
 */
export function checkpoints(facts: Facts): Finding[] {
  const { stepsPerUnit } = facts.ride.bike
  const { lines, limits } = facts.ledger
  return eachBlock(facts, (played) => {
    const { checkpoint } = played.ledger
    if (!checkpoint) return undefined
    const { reached } = lines[played.index]!
    const { low, nominal, high } = reached
    const said = { block: quotedItem(played.block), told: checkpoint, reached: { low, nominal, high }, stepsPerUnit }
    if (!narrowed(reached, checkpoint, limits)) {
      const off = checkpointRepair(nominal, checkpoint)
      return {
        rule: 'checkpointMissed',
        severity: 'problem',
        text: say('checksKnob.checkpointMissed', { ...said, off, byChange: played.block.resistance.kind === 'change' }),
        why: ARITHMETIC,
        amount: Math.abs(off),
        fixes: () => [callRepair(facts, played, nominal + off, checkpoint), rangeRepair(facts, played)],
      }
    }
    const isBelow = low !== null && low < checkpoint.from
    const isAbove = high !== null && !checkpoint.orMore && high > checkpoint.to
    if (!isBelow && !isAbove) return undefined
    return {
      rule: 'checkpointLoose',
      severity: 'hint',
      text: say('checksKnob.checkpointLoose', said),
      why: ARITHMETIC,
    }
  })
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
  return fix ? { ...fix, label: say('checks.fixIn', { fix: fix.label, block: quotedItem(turned.block) }) } : own()
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
  const said = { told: checkpoint, stepsPerUnit: facts.ride.bike.stepsPerUnit }
  const done = say('checksKnob.checkpointSet', { block: quotedItem(played.block), ...said })
  return callFix(played.block, say('checksKnob.setCheckpoint', said), done, { ...stated, checkpoint })
}
