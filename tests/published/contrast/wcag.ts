/** Contrast of colour pairs and one luminance, as published. */
const WCAG = 'W3C, Web Content Accessibility Guidelines 2.2 (2023), relative luminance and contrast ratio definitions'
const CHECKER = "printed results on the npm package page 'contrast-ratio-checker'"

export const CONTRASTS = [
  { id: 'wcag.767676.ffffff', fg: '#767676', bg: '#ffffff', expected: 4.542225, tolerance: 0.0001, source: WCAG },
  { id: 'wcag.777777.ffffff', fg: '#777777', bg: '#ffffff', expected: 4.478089, tolerance: 0.0001, source: WCAG },
  { id: 'wcag.595959.ffffff', fg: '#595959', bg: '#ffffff', expected: 7.004729, tolerance: 0.0001, source: WCAG },
  { id: 'wcag.949494.ffffff', fg: '#949494', bg: '#ffffff', expected: 3.03347, tolerance: 0.0001, source: WCAG },
  { id: 'wcag.ff0000.ffffff', fg: '#ff0000', bg: '#ffffff', expected: 3.998477, tolerance: 0.0001, source: WCAG },
  { id: 'wcag.0000ff.ffffff', fg: '#0000ff', bg: '#ffffff', expected: 8.592471, tolerance: 0.0001, source: WCAG },
  { id: 'wcag.ff8100.64003a', fg: '#ff8100', bg: '#64003a', expected: 5.23537, tolerance: 0.0001, source: CHECKER },
  { id: 'wcag.e5e5e5.aabb00', fg: '#e5e5e5', bg: '#aabb00', expected: 1.698093, tolerance: 0.0001, source: CHECKER },
] as const

/** Printed to six places. */
export const LUMINANCE = {
  id: 'wcag.lum',
  rgb: 'rgb(255, 129, 0)',
  expected: 0.369605,
  decimals: 6,
  tolerance: 1e-9,
  source: CHECKER,
} as const
