/**
 * Classes of intensity by whole per cent of the heart-rate reserve, lower bounds inclusive.
 * Source: ACSM Guidelines, 10th ed. 2018 / Garber CE et al., Med Sci Sports Exerc 2011;43(7):1334-1359.
 */
export const INTENSITY_CLASSES = [
  { name: 'very light', hrr: 0 },
  { name: 'light', hrr: 30 },
  { name: 'moderate', hrr: 40 },
  { name: 'vigorous', hrr: 60 },
  { name: 'near-maximal', hrr: 90 },
] as const

export type IntensityClass = (typeof INTENSITY_CLASSES)[number]['name']
