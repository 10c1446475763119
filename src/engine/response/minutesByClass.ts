import type { Seconds } from '#units/units.ts'
import { INTENSITY_CLASSES, type IntensityClass } from './intensityClass.ts'
import type { Relaxation } from './relaxation.ts'
import { secondsBetween } from './secondsBetween.ts'

/** Where one class ends and the next begins, as shares of the heart-rate reserve. */
const BOUNDS = INTENSITY_CLASSES.slice(1).map((row) => row.hrr / 100)

/** Seconds the predicted heart rate spends in each class of intensity. */
export function secondsByClass(pieces: readonly Relaxation[]): Record<IntensityClass, Seconds> {
  const seconds = secondsBetween(pieces, BOUNDS)
  return Object.fromEntries(INTENSITY_CLASSES.map((row, i) => [row.name, seconds[i]!])) as Record<IntensityClass, Seconds>
}
