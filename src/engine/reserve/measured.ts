import type { Seconds } from '#units/units.ts'

/**
 * Time in which half of W′ came back in the laboratory, after exhausting single-leg work.
 * People differ widely, so the reserve is a relative picture of a modelled rider.
 * Source: Skiba PF et al., Eur J Appl Physiol 2015;115(4):703-713.
 */
export const MEASURED_HALF_TIME: Seconds = 232
