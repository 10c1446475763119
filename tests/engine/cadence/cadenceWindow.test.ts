import { describe, expect, it } from 'vitest'
import { cadenceWindow, sayFit } from '#engine/cadence/cadenceWindow.ts'
import { constantsOf } from '#engine/constants.ts'
import { aBlock } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const rules = constantsOf({})

describe('the cadence a block is usually ridden at', () => {
  it('is its terrain’s, inside the bounds of its posture', () => {
    expect(cadenceWindow({ terrain: 'hill', posture: 'seated' }, rules)).toEqual({ from: 60, to: 78 })
    expect(cadenceWindow({ terrain: 'recover', posture: 'standing' }, rules)).toEqual({ from: 70, to: 85 })
    expect(cadenceWindow({ terrain: 'hold', posture: 'seated' }, rules)).toEqual({ from: 60, to: 110 })
  })

  it('is the posture’s where the two do not meet', () => {
    expect(cadenceWindow({ terrain: 'push', posture: 'standing' }, constantsOf({ houseRules: { standingMaxRpm: 80 } }))).toEqual({
      from: 60,
      to: 80,
    })
  })

  it('is any for a flush, a stretch, or off the bike', () => {
    expect(cadenceWindow({ terrain: 'flush', posture: 'seated' }, rules)).toBeUndefined()
    expect(cadenceWindow({ terrain: 'flat', posture: 'offBike' }, rules)).toBeUndefined()
  })
})

describe('how a cadence suits blocks', () => {
  const hill = aBlock('h', { terrain: 'hill' })
  const push = aBlock('p', { terrain: 'push' })
  it.each([
    [66, [hill], 'fits the block'],
    [66, [hill, hill], 'fits both blocks'],
    [66, [hill, push, hill], 'fits 2 of 3 blocks'],
    [43, [hill, push], 'too slow'],
    [132, [hill, push], 'too fast'],
    [80, [hill, push], 'fits no block'],
    [80, [aBlock('s', { cadence: { rpm: 70 } })], null],
  ])('%d rpm: %#', (rpm, blocks, said) => {
    const fit = sayFit(rpm, blocks, rules)
    expect(fit && told(fit)).toBe(said)
  })
})
