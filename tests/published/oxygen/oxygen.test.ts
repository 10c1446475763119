import { describe, expect, it } from 'vitest'
import { wattsForUptake } from '#engine/demand/oxygenCost.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { beltWork, KGM_PER_MINUTE_OF_WATT } from '#tests/support/reference/ergometer.ts'
import { oxygenUptake, oxygenUptakeAtPeak, oxygenUptakeOfWork } from '#tests/support/reference/oxygenCost.ts'
import { sittingStill, steadily } from '#tests/support/reported.ts'
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

const energy = (watts: number, massKg: number, minutes = 1) => steadily({ watts, minutes, rider: { massKg } }).energy
const uptake = ({ watts, mass_kg }: Inputs) => energy(watts, mass_kg).meanUptake

/** The least and the most watts that the page does not call outside the equation. */
function statedRange(): number[] {
  const inside = Array.from({ length: 300 }, (_, watts) => watts).filter((watts) => energy(watts, 70).outsideSeconds === 0)
  return [inside[0]!, inside.at(-1)!]
}

checkRows(
  'oxygen cost of leg cycling',
  rows,
  {
    'acsm.vo2': uptake,
    'acsm.inverse': ({ vo2, mass_kg }: Inputs) => wattsForUptake(vo2, mass_kg),
    'acsm.range': statedRange,
    'acsm.kcalmin': ({ watts, mass_kg }: Inputs) => energy(watts, mass_kg).kcal,
    'acsm.kcal45': ({ watts, mass_kg, minutes }: Inputs) => energy(watts, mass_kg, minutes).kcal,
    'acsm.met': (inputs: Inputs) => uptake(inputs) / sittingStill(1).energy.meanUptake,
    'acsm.metkcalkgh': () => sittingStill(60, { massKg: 1 }).energy.kcal,
    'acsm.612gap': uptake,
  },
  {
    'acsm.vo2.kgm': ({ kgm_per_min, mass_kg }: Inputs) => oxygenUptakeOfWork(kgm_per_min, mass_kg),
    'acsm.vo2.kp': ({ kp, rpm, m_per_rev, mass_kg }: Inputs) => oxygenUptakeOfWork(beltWork(kp, rpm, m_per_rev), mass_kg),
    'friend.vo2': ({ watts, mass_kg }: Inputs) => oxygenUptakeAtPeak(watts, mass_kg),
  },
)

describe('the page agrees with the yardsticks', () => {
  const cases = [50, 75, 100, 150, 200].flatMap((watts) => [50, 70, 95].map((massKg) => ({ watts, massKg })))

  it.each(cases)('at $watts W and $massKg kg', ({ watts, massKg }) => {
    const { meanUptake } = energy(watts, massKg)
    expect(meanUptake).toBeCloseTo(oxygenUptake(watts, massKg), 9)
    // A kilogram-metre form with 1.8 takes a watt for 6 of them, two per cent off.
    expect(Math.abs(oxygenUptakeOfWork(watts * KGM_PER_MINUTE_OF_WATT, massKg) / meanUptake - 1)).toBeLessThan(0.02)
    // Made for peak tests, which leave out the turning of the legs: lower throughout, by less than a third.
    expect(oxygenUptakeAtPeak(watts, massKg) / meanUptake).toBeGreaterThan(2 / 3)
    expect(oxygenUptakeAtPeak(watts, massKg)).toBeLessThan(meanUptake)
  })
})
