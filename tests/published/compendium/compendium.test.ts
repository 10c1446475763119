import { describe, expect, it } from 'vitest'
import { UNCERTAINTY } from '#engine/band/uncertainty.ts'
import { wattsForUptake } from '#engine/demand/oxygenCost.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import {
  COMPENDIUM_2011,
  COMPENDIUM_2024,
  COMPENDIUM_GENERAL,
  type CompendiumBand,
  metsByTable,
} from '#tests/support/reference/compendium.ts'
import { sittingStill, steadily } from '#tests/support/reported.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  code: string
  watts_from?: number
  watts_to?: number
  met: number
  watts: number
  mass_kg: number
  minutes: number
}

const AT_REST = sittingStill(1).energy.meanUptake

/** METs the page makes of a power. */
const mets = (watts: number, massKg: number) => steadily({ watts, minutes: 1, rider: { massKg } }).energy.meanUptake / AT_REST

/** kcal the page gives a rider at so many METs. */
const kcal = ({ met, mass_kg, minutes }: Inputs) =>
  steadily({ watts: wattsForUptake(met * AT_REST, mass_kg), minutes, rider: { massKg: mass_kg } }).energy.kcal

/** The METs by the code, after making sure that both edges of the band read the same by power. */
const band =
  (table: readonly CompendiumBand[]) =>
  ({ code, watts_from, watts_to }: Inputs) => {
    if (watts_from === undefined) return COMPENDIUM_GENERAL[code]
    const listed = table.find((row) => row.code === code)?.mets
    for (const watts of [watts_from, watts_to ?? watts_from + 100]) expect(metsByTable(watts, table)).toBe(listed)
    return listed
  }

checkRows(
  'compendium of physical activities',
  rows,
  { 'comp24.class45': kcal, 'comp.cross': ({ watts, mass_kg }: Inputs) => mets(watts, mass_kg) },
  { comp11: band(COMPENDIUM_2011), comp24: band(COMPENDIUM_2024) },
)

describe('the page agrees with the yardstick', () => {
  it('to what it says its energy may be off, where the newer table gives a single power or a narrow band', () => {
    const narrow = COMPENDIUM_2024.filter(({ from, to }) => from >= 50 && to !== null && to <= 200 && to - from <= 10)
    expect(narrow).toHaveLength(4)
    for (const { from, to, mets: listed } of narrow) {
      expect(Math.abs(mets((from + to!) / 2, 70) / listed - 1)).toBeLessThanOrEqual(UNCERTAINTY.energyModel)
    }
  })
})

describe('gaps of the newer table', () => {
  it('read as a number for every power, rising with it', () => {
    const all = Array.from({ length: 401 }, (_, watts) => metsByTable(watts))
    expect(all.every(Number.isFinite)).toBe(true)
    expect(all.every((value, i) => i === 0 || value >= all[i - 1]!)).toBe(true)
    // Halfway between 5 METs at 60 W and 5.8 at 70 W.
    expect(metsByTable(65)).toBeCloseTo(5.4, 10)
  })
})
