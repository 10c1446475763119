import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { CONSTANTS, type ConstantName, constantsOf } from '#engine/constants.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { en } from '#words/en/index.ts'

const NAMES = Object.keys(CONSTANTS) as ConstantName[]

describe('the constants', () => {
  it('each have a default within their bounds', () => {
    for (const name of NAMES) {
      const { min, max, default: value } = CONSTANTS[name]
      expect(value, name).toBeGreaterThanOrEqual(min)
      expect(value, name).toBeLessThanOrEqual(max)
    }
  })

  it('are the defaults without house rules', () => {
    const rules = constantsOf({})
    for (const name of NAMES) expect(rules[name]).toBe(CONSTANTS[name].default)
  })

  it('give way to house rules within their bounds, and to no others', () => {
    const houseRules = {
      hardEffort: 9,
      standingMaxRpm: 1000,
      easyEffort: Number.NaN,
      heartRateTau: 60,
      noSuchRule: 4,
      toString: 3,
      workEffort: 6.5,
    }
    const rules = constantsOf({ houseRules })
    expect(rules).toEqual({ ...constantsOf({}), hardEffort: 9, workEffort: 6.5 })
  })

  it('change what the report says', () => {
    const blocks = [
      aBlock('push', { ...inSeconds(30), effort: { from: 8, to: 8 } }),
      aBlock('ease', { ...inSeconds(300), effort: { from: 3, to: 3 } }),
    ]
    const ride = { ...smallRide(), sections: [aSection('s', { blocks })] }
    expect(computeRide(ride).recovery.bouts).toHaveLength(1)
    expect(computeRide({ ...ride, houseRules: { hardEffort: 9 } }).recovery.bouts).toHaveLength(0)
  })
})

it('the constants stand as they were read last; `npx vitest run tests/engine/constants.test.ts -u` keeps another table', async () => {
  const rows = NAMES.map((name) => {
    const { unit, default: value, min, max, source } = CONSTANTS[name]
    const { rules } = en
    return `${name} | ${rules.label({ name })} | ${value} ${rules.unit({ unit })} | ${min} to ${max} | ${rules.source({ source })}`
  })
  await expect(`${rows.join('\n')}\n`).toMatchFileSnapshot('constants.txt')
})
