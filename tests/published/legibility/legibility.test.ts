import { describe, expect, it } from 'vitest'
import { capHeight } from '#units/capHeight.ts'
import { TEXT_HEIGHTS } from './textHeight.ts'

describe('capital height for a distance and a visual angle', () => {
  it.each(TEXT_HEIGHTS)('$id: $metres m at $arcminutes arcmin ($source)', ({ metres, arcminutes, expected, tolerance }) => {
    expect(Math.abs(capHeight(metres, arcminutes) - expected)).toBeLessThanOrEqual(tolerance)
  })
})
