import type { Finding } from '#engine/report.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, atBlock, quoted } from './finding.ts'

/** Blocks whose knob stands outside the bike's calibrated points, where demand is by feel; said once, at the first. */
export function beyondCalibration(facts: Facts): Finding[] {
  const demand = facts.riders.find(({ reference }) => reference)?.demand ?? []
  const outside = demand.flatMap((asked, index) => (asked?.source === 'above' || asked?.source === 'below' ? [index] : []))
  const [first] = outside
  if (first === undefined) return []
  const { unit, points } = facts.ride.bike
  const others = outside.length === 1 ? '' : ` (and ${outside.length - 1} more)`
  const range = `${formatNumber(points[0]![0], 2)}–${formatNumber(points.at(-1)![0], 2)} ${unit}s`
  return [
    atBlock(facts, first, {
      rule: 'beyondCalibration',
      severity: 'hint',
      text: `${quoted(facts, first)}${others} lies outside the calibrated ${range} of this bike, so its demand is by feel.`,
      why: ARITHMETIC,
      amount: outside.length,
    }),
  ]
}
