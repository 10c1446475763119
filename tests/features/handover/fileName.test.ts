import { describe, expect, it } from 'vitest'
import { fileName } from '#features/handover/fileName.ts'

describe('fileName', () => {
  it.each([
    ['Twenty-Minute Spark', 'twenty-minute-spark.ride.json'],
    ['  Été: montée n° 2/3  ', 'ete-montee-n-2-3.ride.json'],
    ['夜の坂', '夜の坂.ride.json'],
    ['../../etc/passwd', 'etc-passwd.ride.json'],
    ['', 'ride.ride.json'],
    ['???', 'ride.ride.json'],
  ])('saves %j as %s', (title, name) => {
    expect(fileName(title)).toBe(name)
  })

  it('keeps the name short without splitting a character', () => {
    const name = fileName('𝟙'.repeat(100))
    expect(name).toBe(`${'1'.repeat(60)}.ride.json`)
    expect(fileName(`${'a'.repeat(59)} b`)).toBe(`${'a'.repeat(59)}.ride.json`)
  })
})
