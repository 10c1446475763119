import { sayAt } from '#features/setup/bike/fields.ts'
import type { Bike } from '#plan/model.ts'
import type { Setting } from '#units/units.ts'
import { words } from '#words/words.ts'

/** The note on settings that were not tried, where there are any. */
export const carriedWords = (carried: readonly Setting[], bike: Bike): string[] =>
  carried.length === 0 ? [] : [words.calibrating.carried({ settings: carried.map((setting) => sayAt(setting, bike)) })]
