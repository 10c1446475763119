import type { Finding } from '#engine/report.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, atBlock, quoted } from './finding.ts'

/** Blocks whose knob stands outside the bike's calibrated points, where demand is by feel; said once, at the first. */
export function beyondCalibration(facts: Facts): Finding[] {
  const demand = facts.riders.find(({ reference }) => reference)?.demand ?? []
  const outside = demand.flatMap((asked, index) => (asked?.source === 'above' || asked?.source === 'below' ? [index] : []))
  const [first] = outside
  if (first === undefined) return []
  const { unit, points } = facts.ride.bike
  return [
    atBlock(facts, first, {
      rule: 'beyondCalibration',
      severity: 'hint',
      text: say('checksKnob.beyondCalibration', {
        block: quoted(facts, first),
        others: outside.length - 1,
        from: points[0]![0],
        to: points.at(-1)![0],
        unit,
      }),
      why: ARITHMETIC,
      amount: outside.length,
    }),
  ]
}
