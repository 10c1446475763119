import { describe, expect, it } from 'vitest'
import { kcalOfMets, metsOf, oxygenUptake } from '#engine/demand/oxygenCost.ts'
import { COMPENDIUM_2011, COMPENDIUM_2024, COMPENDIUM_GENERAL, type CompendiumBand, metsByTable } from '#engine/energy/compendium.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
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

/** The METs by the code, after making sure that both edges of the band read the same by power. */
const band =
  (table: readonly CompendiumBand[]) =>
  ({ code, watts_from, watts_to }: Inputs) => {
    if (watts_from === undefined) return COMPENDIUM_GENERAL[code]
    const mets = table.find((row) => row.code === code)?.mets
    for (const watts of [watts_from, watts_to ?? watts_from + 100]) expect(metsByTable(watts, table)).toBe(mets)
    return mets
  }

const equation = ({ watts, mass_kg }: Inputs) => metsOf(oxygenUptake(watts, mass_kg))

checkRows('compendium of physical activities', rows, {
  comp11: band(COMPENDIUM_2011),
  comp24: band(COMPENDIUM_2024),
  'comp24.class45': ({ met, mass_kg, minutes }: Inputs) => kcalOfMets(met, mass_kg, minutes),
  'comp.cross': equation,
})

describe('gaps of the newer table', () => {
  it('reads a number for every power, rising with it', () => {
    const all = Array.from({ length: 401 }, (_, watts) => metsByTable(watts))
    expect(all.every(Number.isFinite)).toBe(true)
    expect(all.every((mets, i) => i === 0 || mets >= all[i - 1]!)).toBe(true)
    // Halfway between 5 METs at 60 W and 5.8 at 70 W.
    expect(metsByTable(65)).toBeCloseTo(5.4, 10)
  })
})
