/**
 * Classes of intensity by whole per cent, lower bounds inclusive.
 * Source: ACSM Guidelines, 10th ed. 2018 / Garber CE et al., Med Sci Sports Exerc
 * 2011;43(7):1334-1359. One reprint starts near-maximal at 95 % of maximal heart rate.
 */
export const INTENSITY_CLASSES = [
  { name: 'very light', hrr: 0, hrmax: 0, vo2max: 0, rpe6_20: 6 },
  { name: 'light', hrr: 30, hrmax: 57, vo2max: 37, rpe6_20: 9 },
  { name: 'moderate', hrr: 40, hrmax: 64, vo2max: 46, rpe6_20: 12 },
  { name: 'vigorous', hrr: 60, hrmax: 77, vo2max: 64, rpe6_20: 14 },
  { name: 'near-maximal', hrr: 90, hrmax: 96, vo2max: 91, rpe6_20: 18 },
] as const

export type IntensityClass = (typeof INTENSITY_CLASSES)[number]['name']
type IntensityScale = 'hrr' | 'hrmax' | 'vo2max' | 'rpe6_20'

/** Highest value of each scale. */
const SCALE_TOP: Record<IntensityScale, number> = { hrr: 100, hrmax: 100, vo2max: 100, rpe6_20: 20 }

/** The class a value falls in: the highest whose lower bound it reaches. */
export function intensityClassOf(value: number, scale: IntensityScale = 'hrr'): IntensityClass {
  return INTENSITY_CLASSES.findLast((row) => value >= row[scale])?.name ?? 'very light'
}

/** Whole values that belong to a class, both ends inclusive. */
export function classBounds(name: IntensityClass, scale: IntensityScale): [from: number, to: number] {
  const index = INTENSITY_CLASSES.findIndex((row) => row.name === name)
  const next = INTENSITY_CLASSES[index + 1]
  return [INTENSITY_CLASSES[index]![scale], next === undefined ? SCALE_TOP[scale] : next[scale] - 1]
}
