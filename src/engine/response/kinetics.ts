import type { Seconds } from '#units/units.ts'

/**
 * Measured time constants that say how far the engine's single one may be off; shown as
 * sources, not computed with.
 */

/** Heart rate after a step down (treadmill). Source: Hunt KJ et al., BioMed Eng OnLine 2015;14:117. */
export const HEART_TAU_DOWN: Seconds = 54.4

/** Oxygen uptake into hard work, from unloaded and from moderate pedalling. Source: J Appl Physiol 2010, doi 10.1152/japplphysiol.00550.2010. */
export const UPTAKE_TAU: { fromUnloaded: Seconds; fromModerate: Seconds } = { fromUnloaded: 28, fromModerate: 48 }
