import { describe, expect, test } from 'vitest'
import { isInSight, turnTo } from '#features/drafting/stage/followHead.ts'

const sight = { left: 1000, width: 800 }

describe('the stage follows the head', () => {
  test('as a page is turned: it stays until the head nears the right edge', () => {
    expect(turnTo(1000, sight)).toBeNull()
    expect(turnTo(1752, sight)).toBeNull()
    expect(turnTo(1753, sight)).toBe(1657)
  })

  test('to a head before what is seen as well, and never past the start', () => {
    expect(turnTo(500, sight)).toBe(404)
    expect(turnTo(40, sight)).toBe(0)
  })

  test('once turned it stays, however narrow the stage', () => {
    for (const width of [40, 300, 1400]) {
      const left = turnTo(5000, { left: 0, width })!
      expect(turnTo(5000, { left, width })).toBeNull()
      expect(turnTo(5001, { left, width })).toBeNull()
    }
  })

  test('a head at either edge is in sight', () => {
    expect([999, 1000, 1800, 1801].map((x) => isInSight(x, sight))).toEqual([false, true, true, false])
  })
})
