/** Capital heights by viewing distance and visual angle, h = 2·d·tan(a/2), in millimetres. */
const SOURCE =
  'ISO 9241-3, text height (16 arcmin minimum, 20–22 preferred; carried into ISO 9241-303:2011), and NUREG-0700 rev. 2, guideline 1.3.1-4'

export const TEXT_HEIGHTS = [
  { id: 'text.0.5.16', metres: 0.5, arcminutes: 16, expected: 2.32711, tolerance: 0.005, source: SOURCE },
  { id: 'text.0.5.20', metres: 0.5, arcminutes: 20, expected: 2.90889, tolerance: 0.005, source: SOURCE },
  { id: 'text.0.7.16', metres: 0.7, arcminutes: 16, expected: 3.257954, tolerance: 0.005, source: SOURCE },
  { id: 'text.0.7.20', metres: 0.7, arcminutes: 20, expected: 4.072446, tolerance: 0.005, source: SOURCE },
  { id: 'text.1.0.16', metres: 1, arcminutes: 16, expected: 4.65422, tolerance: 0.005, source: SOURCE },
  { id: 'text.1.0.20', metres: 1, arcminutes: 20, expected: 5.817781, tolerance: 0.005, source: SOURCE },
  { id: 'text.1.0.22', metres: 1, arcminutes: 22, expected: 6.399562, tolerance: 0.005, source: SOURCE },
  { id: 'text.1.5.20', metres: 1.5, arcminutes: 20, expected: 8.726671, tolerance: 0.005, source: SOURCE },
  { id: 'text.1.5.22', metres: 1.5, arcminutes: 22, expected: 9.599344, tolerance: 0.005, source: SOURCE },
] as const
