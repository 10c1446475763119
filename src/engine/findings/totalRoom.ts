import { ruleAt, sizeAt } from '#engine/anotherBike/turnsAt.ts'
import type { Room } from '#engine/demand/stepsToClose.ts'
import { amountOfKnob, placeOverBase } from '#engine/ledger/amountOfKnob.ts'
import type { PlayedBlock } from '#engine/played.ts'
import { formatSetting, formatSettingRange } from '#units/formatSetting.ts'
import type { Facts } from './facts.ts'
import { needOf } from './needOf.ts'

/**
 * The totals a repair may bring a played block to without breaking what another rule says of it,
 * and in words which rule ends them. What legs need comes before what is heavy: where the two
 * contradict each other the least is the most as well.
 */
export function totalRoom(facts: Facts, played: PlayedBlock): Room {
  const least = leasts(facts, played).reduce((highest, one) => (one.total > highest.total ? one : highest))
  const most = mosts(facts, played).reduce((lowest, one) => (one.total < lowest.total ? one : lowest))
  return { least, most: most.total < least.total ? { ...most, total: least.total } : most }
}

type End = Room['least']

function leasts(facts: Facts, played: PlayedBlock): End[] {
  const { ledger, ride } = facts
  const { floor, base } = ledger.limits
  const need = needOf(facts, played)
  const ends: End[] = [{ total: floor, reason: 'the knob is at its loosest' }]
  if (played.cadence.kind !== 'still' && played.block.resistance.kind !== 'allOff')
    ends.push({ total: Math.max(floor, base), reason: 'there is nothing left to take off above base' })
  if (need)
    ends.push({ total: base + need.least, reason: `it ${need.doing}, which takes at least ${placeOverBase(need.least, ride.bike)}` })
  return [...ends, ...checkpointEnd(facts, played, 'from')]
}

function mosts(facts: Facts, played: PlayedBlock): End[] {
  const { ledger, ride, rules, blocks } = facts
  const { base, ceiling } = ledger.limits
  const { block, index } = played
  const { max, stepsPerUnit } = ride.bike
  const ends: End[] = [{ total: ceiling, reason: `the knob ends at ${formatSetting(max * stepsPerUnit, stepsPerUnit)}` }]
  if (played.cadence.kind !== 'still' && Math.max(block.effort.from, block.effort.to) <= rules.easyTotalEffort) {
    const steps = ruleAt(facts, played, rules.easyTotal, 'atMost')
    ends.push({ total: base + steps, reason: `${placeOverBase(steps, ride.bike)} is the most for so easy an effort` })
  }
  if (index === blocks.length - 1 && played.cadence.kind !== 'still') {
    const steps = ruleAt(facts, played, rules.endTotal, 'atMost')
    ends.push({ total: base + steps, reason: `a class ends on no more than ${placeOverBase(steps, ride.bike)}` })
  }
  const { before } = played.ledger
  if (index > 0 && block.resistance.kind !== 'byFeel' && before.nominal >= base) {
    const steps = sizeAt(facts, played, rules.largestAdded)
    ends.push({ total: before.nominal + steps, reason: `${amountOfKnob(steps, ride.bike)} is the most to add in one call` })
  }
  return [...ends, ...checkpointEnd(facts, played, 'to')]
}

function checkpointEnd({ ride }: Facts, { ledger: { checkpoint } }: PlayedBlock, end: 'from' | 'to'): End[] {
  if (!checkpoint || (checkpoint.orMore && end === 'to')) return []
  const range = formatSettingRange(checkpoint, ride.bike.stepsPerUnit)
  return [{ total: checkpoint[end], reason: `riders are told that they should be at ${range} there` }]
}
