import { describe, expect, it } from 'vitest'
import { contrast, luminance } from '#tests/support/contrast.ts'
import { CONTRASTS, LUMINANCE } from './wcag.ts'

describe('the contrast measure that judges the palette', () => {
  it.each(CONTRASTS)('$id: $fg on $bg ($source)', ({ fg, bg, expected, tolerance }) => {
    expect(Math.abs(contrast(fg, bg) - expected)).toBeLessThanOrEqual(tolerance)
  })

  it(`${LUMINANCE.id}: relative luminance (${LUMINANCE.source})`, () => {
    const printed = Number(luminance(LUMINANCE.rgb).toFixed(LUMINANCE.decimals))
    expect(Math.abs(printed - LUMINANCE.expected)).toBeLessThanOrEqual(LUMINANCE.tolerance)
  })
})
