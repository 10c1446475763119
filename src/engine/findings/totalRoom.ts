import { ruleAt, sizeAt } from '#engine/anotherBike/turnsAt.ts'
import type { Room } from '#engine/demand/stepsToClose.ts'
import { knobSize } from '#engine/ledger/knobSize.ts'
import type { PlayedBlock } from '#engine/played.ts'
import { say } from '#words/said.ts'
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
  const ends: End[] = [{ total: floor, reason: say('checksKnob.knobLoosest') }]
  if (played.cadence.kind !== 'still' && played.block.resistance.kind !== 'allOff')
    ends.push({ total: Math.max(floor, base), reason: say('checksKnob.nothingOverBase') })
  if (need) {
    const reason = say('checksKnob.needs', { doing: need.doing, least: knobSize(need.least, ride.bike) })
    ends.push({ total: base + need.least, reason })
  }
  return [...ends, ...checkpointEnd(facts, played, 'from')]
}

function mosts(facts: Facts, played: PlayedBlock): End[] {
  const { ledger, ride, rules, blocks } = facts
  const { base, ceiling } = ledger.limits
  const { block, index } = played
  const { max, stepsPerUnit } = ride.bike
  const ends: End[] = [{ total: ceiling, reason: say('checksKnob.knobEnds', { at: max * stepsPerUnit, stepsPerUnit }) }]
  if (played.cadence.kind !== 'still' && Math.max(block.effort.from, block.effort.to) <= rules.easyTotalEffort) {
    const steps = ruleAt(facts, played, rules.easyTotal, 'atMost')
    ends.push({ total: base + steps, reason: say('checksKnob.easyMost', { most: knobSize(steps, ride.bike) }) })
  }
  if (index === blocks.length - 1 && played.cadence.kind !== 'still') {
    const steps = ruleAt(facts, played, rules.endTotal, 'atMost')
    ends.push({ total: base + steps, reason: say('checksKnob.endMost', { most: knobSize(steps, ride.bike) }) })
  }
  const { before } = played.ledger
  if (index > 0 && block.resistance.kind !== 'byFeel' && before.nominal >= base) {
    const steps = sizeAt(facts, played, rules.largestAdded)
    ends.push({ total: before.nominal + steps, reason: say('checksKnob.addedMost', { most: knobSize(steps, ride.bike) }) })
  }
  return [...ends, ...checkpointEnd(facts, played, 'to')]
}

function checkpointEnd({ ride }: Facts, { ledger: { checkpoint } }: PlayedBlock, end: 'from' | 'to'): End[] {
  if (!checkpoint || (checkpoint.orMore && end === 'to')) return []
  return [{ total: checkpoint[end], reason: say('checksKnob.toldThere', { told: checkpoint, stepsPerUnit: ride.bike.stepsPerUnit }) }]
}
