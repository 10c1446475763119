import { computeRide } from '#engine/computeRide.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { beltPower, crankTorque, KGM_PER_MINUTE_OF_WATT, pedalForce } from '#tests/support/reference/ergometer.ts'
import { blocksOnly } from '#tests/support/reported.ts'
import { inSeconds } from '#tests/support/smallRide.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  watts: number
  rpm: number
  crank_m: number
  kp: number
  m_per_rev: number
}

/**
 * Power on a friction bike whose knob reads kiloponds, calibrated at 60 turns a minute by the yardstick of the belt: the
 * page brings it to the cadence ridden.
 */
function friction({ kp, rpm, m_per_rev }: Inputs): number {
  const points = [1, 2, 2.5, 3].map((load): [number, number] => [load, beltPower(load, 60, m_per_rev)])
  const ride = blocksOnly([{ ...inSeconds(60), cadence: { rpm }, resistance: { kind: 'total', from: kp * 10, to: kp * 10 } }])
  const bike = { ...ride.bike, stepsPerUnit: 10, brake: 'friction' as const, referenceRpm: 60, points }
  return computeRide({ ...ride, datum: 'loose', bike }).riders[0]!.demand[0]!.watts
}

checkRows(
  'mechanics of the crank',
  rows,
  { 'mech.monark': friction },
  {
    'mech.torque': ({ watts, rpm }: Inputs) => crankTorque(watts, rpm),
    'mech.force': ({ watts, rpm, crank_m }: Inputs) => pedalForce(watts, rpm, crank_m),
    'mech.kgm': () => KGM_PER_MINUTE_OF_WATT,
  },
)
