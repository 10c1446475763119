/**
 * Height of capitals that fill a visual angle at a distance: h = 2·d·tan(a/2).
 *
 * @param metres distance from the eye, above 0
 * @param arcminutes visual angle; 16 is the least for reading, 20–22 is comfortable
 *   (ISO 9241-3 text height, carried into ISO 9241-303; NUREG-0700 rev. 2, guideline 1.3.1-4)
 * @returns millimetres
 */
export function capHeight(metres: number, arcminutes: number): number {
  return 2 * metres * 1000 * Math.tan((arcminutes / 60) * (Math.PI / 360))
}

/** Capital height of Atkinson Hyperlegible Next in em: sCapHeight 668 of 1000 units in the font's OS/2 table. */
export const CAP_RATIO = 0.668

/** Font size, in the unit given, whose capitals have this height. */
export const fontSizeFor = (cap: number): number => cap / CAP_RATIO
