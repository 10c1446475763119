import { beltWork } from '#engine/demand/mechanics.ts'
import {
  kcalPerMinute,
  metsOf,
  OXYGEN,
  oxygenUptake,
  oxygenUptakeAtPeak,
  oxygenUptakeOfWork,
  wattsForUptake,
} from '#engine/demand/oxygenCost.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  watts: number
  mass_kg: number
  kgm_per_min: number
  kp: number
  rpm: number
  m_per_rev: number
  vo2: number
  minutes: number
}

const uptake = ({ watts, mass_kg }: Inputs) => oxygenUptake(watts, mass_kg)

checkRows('oxygen cost of leg cycling', rows, {
  'acsm.vo2': uptake,
  'acsm.vo2.kgm': ({ kgm_per_min, mass_kg }: Inputs) => oxygenUptakeOfWork(kgm_per_min, mass_kg),
  'acsm.vo2.kp': ({ kp, rpm, m_per_rev, mass_kg }: Inputs) => oxygenUptakeOfWork(beltWork(kp, rpm, m_per_rev), mass_kg),
  'acsm.inverse': ({ vo2, mass_kg }: Inputs) => wattsForUptake(vo2, mass_kg),
  'acsm.range': () => [...OXYGEN.statedRange],
  'acsm.kcalmin': (inputs: Inputs) => kcalPerMinute(uptake(inputs), inputs.mass_kg),
  'acsm.kcal45': (inputs: Inputs) => kcalPerMinute(uptake(inputs), inputs.mass_kg) * inputs.minutes,
  'acsm.met': (inputs: Inputs) => metsOf(uptake(inputs)),
  'acsm.metkcalkgh': () => kcalPerMinute(OXYGEN.rest, 1) * 60,
  'acsm.612gap': uptake,
  'friend.vo2': ({ watts, mass_kg }: Inputs) => oxygenUptakeAtPeak(watts, mass_kg),
})
