import type { Rider } from '#plan/riderModel.ts'
import type { Fault, Rule } from './rule.ts'

/** A rider's heart rates rise from rest by the thresholds to the highest, as far as they are given. */
export const ridersInOrder: Rule = ({ riders = [] }) => riderFaults(riders)

/** The same of riders by themselves. */
export const riderFaults = (riders: readonly Rider[]): Fault[] => riders.flatMap((rider, r) => heartFaults(rider, ['riders', r]))

function heartFaults(rider: Rider, path: Fault['path']): Fault[] {
  const { restingHr, maxHr } = rider
  if (maxHr !== undefined && maxHr <= restingHr) return [{ path: [...path, 'maxHr'], wrong: { problem: 'maxHrTooLow' }, found: maxHr }]
  const given = (['restingHr', 'firstThresholdHr', 'secondThresholdHr', 'maxHr'] as const).filter((key) => rider[key] !== undefined)
  const at = given.findIndex((key, i) => i > 0 && rider[key]! <= rider[given[i - 1]!]!)
  if (at < 0) return []
  // A threshold that crosses the highest heart rate is the one that is wrong.
  const key = given[at] === 'maxHr' ? given[at - 1]! : given[at]!
  return [{ path: [...path, key], wrong: { problem: 'thresholdOutOfOrder' }, found: rider[key] }]
}
