import { capHeight } from '#units/capHeight.ts'

/** The distance, in metres, at which capitals of so many millimetres fill a visual angle: `capHeight` the other way. */
export function readingDistance(capMillimetres: number, arcminutes: number): number {
  return capMillimetres / capHeight(1, arcminutes)
}

/** Distance the compact sheet is read at: clipped to the bar. */
export const SHEET_METERS = 0.5
/** Distance the large type is read at: from the saddle in the dark. */
export const LARGE_METERS = 0.7
/** The least angle for reading (see `capHeight`). */
export const LEAST_ARCMINUTES = 16

/** Least capital height of a sheet in millimetres, rounded up to a hundredth. */
export const LEAST_CAP = Math.ceil(capHeight(SHEET_METERS, LEAST_ARCMINUTES) * 100) / 100

/** What a telephone shows a page of ours at: 360 CSS pixels, 95.25 mm of the page, on a display about 66 mm wide. */
export const PHONE_SHARE = 66 / 95.25

/** Beyond this a larger type makes the sheet no easier to read, and a line of it no longer holds a change: 20 arcminutes at 0.7 m. */
export const LARGEST_CAP = Math.floor(capHeight(0.7, 20) * 100) / 100
