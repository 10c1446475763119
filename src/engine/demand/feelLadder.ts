import type { Rider } from '#plan/riderModel.ts'
import type { Effort, Rpm, Watts } from '#units/units.ts'
import { reserveOfEffort } from './effortOfReserve.ts'
import { OXYGEN, wattsForUptake } from './oxygenCost.ts'

/**
 * Feels a rider can find on any bike without a console, from light to heavy, with the effort
 * each is taken for. The words are the trade's, the efforts common practice without a source.
 */
export const FEEL_LADDER = [
  { feel: 'base', effort: 2, means: 'just enough to control the pedals; nothing bounces, nothing pushes back' },
  { feel: 'easy flat', effort: 3, means: 'a light road; you chat' },
  { feel: 'brisk flat', effort: 4, means: 'a road with some grip; you still talk in whole sentences' },
  { feel: 'light hill', effort: 5.5, means: 'the legs have to push; sentences get short' },
  { feel: 'solid hill', effort: 7, means: 'clipped words; you could hold it for a song' },
  { feel: 'heavy hill', effort: 8.5, means: 'one word at a time; you could hold it for a minute or two' },
] as const satisfies readonly { feel: string; effort: Effort; means: string }[]

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
