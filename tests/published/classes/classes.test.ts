import { describe, expect, it } from 'vitest'
import { MEASURED_CLASSES } from '#engine/response/measuredClasses.ts'
import rows from './rows.json' with { type: 'json' }

const row = (id: string) => rows.find((each) => each.id === id)!
const rangeOf = (id: string): [number, number] => {
  const { expected, tolerance } = row(id)
  const values = [expected].flat()
  return [Math.min(...values) - tolerance, Math.max(...values) + tolerance]
}

describe('the band of measured classes', () => {
  const { uptakePercent, heartPercent } = MEASURED_CLASSES

  it('is what Battista 2008 measured, spread and all, and holds Piacentini 2009', () => {
    expect(uptakePercent).toEqual(rangeOf('class.batt'))
    const mean = row('class.piac.vo2').expected as number
    expect(mean).toBeGreaterThan(uptakePercent[0])
    expect(mean).toBeLessThan(uptakePercent[1])
  })

  it('holds the heart rates of Cortis 2021, spread and all, and of Piacentini 2009', () => {
    const [low, high] = rangeOf('class.cortis')
    expect(heartPercent[0]).toBe(Math.floor(low))
    expect(heartPercent[1]).toBeGreaterThan(Math.max(high, row('class.piac.hr').expected as number))
  })
})
