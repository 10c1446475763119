import { expect, it } from 'vitest'
import { tempoWindow } from '#engine/cadence/tempoWindow.ts'
import { constantsOf } from '#engine/constants.ts'
import { aBlock } from '#tests/support/smallRide.ts'

const rules = constantsOf({})
const hill = aBlock('h', { terrain: 'hill' })
const flat = aBlock('f', { terrain: 'flat' })

it('is the trade’s: seated hills at 120 to 156, flats at 150 to 210, one strike a beat', () => {
  expect(tempoWindow([hill], rules)).toEqual({ from: 120, to: 156 })
  expect(tempoWindow([flat], rules)).toEqual({ from: 150, to: 210 })
})

it('holds every block’s own window, and less than an octave', () => {
  expect(tempoWindow([hill, flat], rules)).toEqual({ from: 120, to: 210 })
  const wide = tempoWindow([hill, aBlock('p', { terrain: 'push' })], constantsOf({ houseRules: { seatedMinRpm: 50, seatedMaxRpm: 130 } }))!
  expect(wide.to / wide.from).toBeLessThanOrEqual(2)
})

it('is not there where any cadence will do', () => {
  expect(tempoWindow([], rules)).toBeUndefined()
  expect(tempoWindow([aBlock('s', { terrain: 'stretch' })], rules)).toBeUndefined()
})
