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

/** The distance, in metres, at which capitals of so many millimetres fill a visual angle: {@link capHeight} the other way. */
export function readingDistance(capMillimetres: number, arcminutes: number): number {
  return capMillimetres / capHeight(1, arcminutes)
}

/** Capital height of Atkinson Hyperlegible Next in em: sCapHeight 668 of 1000 units in the font's OS/2 table. */
export const CAP_RATIO = 0.668

/** Font size, in the unit given, whose capitals have this height. */
export const fontSizeFor = (cap: number): number => cap / CAP_RATIO

/** Distance the compact sheet is read at: clipped to the bar. */
const SHEET_METRES = 0.5
const LEAST_ARCMINUTES = 16

/** Least capital height of a sheet in millimetres, rounded up to a hundredth. */
export const LEAST_CAP = Math.ceil(capHeight(SHEET_METRES, LEAST_ARCMINUTES) * 100) / 100

/** Beyond this a larger type makes the sheet no easier to read and its lines harder to follow: 20 arcminutes at one metre. */
export const LARGEST_CAP = Math.floor(capHeight(1, 20) * 100) / 100
