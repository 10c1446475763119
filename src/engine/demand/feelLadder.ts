import type { Rider } from '#plan/riderModel.ts'
import type { Effort, Rpm, Watts } from '#units/units.ts'
import { reserveOfEffort } from './effortOfReserve.ts'
import { OXYGEN, wattsForUptake } from './oxygenCost.ts'

/**
 * Feels a rider can find on any bike without a console, from light to heavy, with the effort
 * each is taken for. The names are the trade's and stand in a bike's document; what each means
 * is told from the catalogue. The efforts are common practice without a source.
 */
export const FEEL_LADDER = [
  { feel: 'base', effort: 2 },
  { feel: 'easy flat', effort: 3 },
  { feel: 'brisk flat', effort: 4 },
  { feel: 'light hill', effort: 5.5 },
  { feel: 'solid hill', effort: 7 },
  { feel: 'heavy hill', effort: 8.5 },
] as const satisfies readonly { feel: string; effort: Effort }[]

export type Feel = (typeof FEEL_LADDER)[number]['feel']

/** The effort a feel is taken for. */
export const effortOfFeel = (feel: Feel): Effort => FEEL_LADDER.find((step) => step.feel === feel)!.effort

/**
 * The power at which a seated rider demands an effort: effort → share of the oxygen-uptake
 * reserve → uptake → watts, the engine's demand read backwards. Never below 0.
 *
 * @param rpm the pace they turn at; the cheapest one where none is given
 */
export function wattsForEffort(effort: Effort, { massKg, vo2max }: Pick<Rider, 'massKg' | 'vo2max'>, rpm?: Rpm): Watts {
  const uptake = OXYGEN.rest + reserveOfEffort(effort) * (vo2max - OXYGEN.rest)
  return Math.max(0, wattsForUptake(uptake, massKg, rpm))
}
