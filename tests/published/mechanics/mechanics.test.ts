import { beltPower, crankTorque, KGM_PER_MINUTE_OF_WATT, pedalForce } from '#engine/demand/mechanics.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  watts: number
  rpm: number
  crank_m: number
  kp: number
  m_per_rev: number
}

checkRows('mechanics of the crank', rows, {
  'mech.torque': ({ watts, rpm }: Inputs) => crankTorque(watts, rpm),
  'mech.force': ({ watts, rpm, crank_m }: Inputs) => pedalForce(watts, rpm, crank_m),
  'mech.kgm': () => KGM_PER_MINUTE_OF_WATT,
  'mech.monark': ({ kp, rpm, m_per_rev }: Inputs) => beltPower(kp, rpm, m_per_rev),
})
