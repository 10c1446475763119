import type { Bike } from '#plan/model.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { type NumberRules, parseNumber } from '#units/parseNumber.ts'
import { parseSetting } from '#units/parseSetting.ts'
import type { Rpm, Setting, Watts } from '#units/units.ts'
import type { Refusal } from '#words/said.ts'
import { words } from '#words/words.ts'

/** How the numbers of a bike are read and written. */

const STEPS: NumberRules = { of: 'stepsPerUnit', min: 1, max: 100 }
export const parseStepsPerUnit = (text: string): Parsed<number> => parseNumber(text, STEPS)

const RPM: NumberRules = { of: 'cadence', min: 40, max: 130, suffixes: ['rev/min', 'u/min', 'rpm'] }
/** A cadence one can hold while reading a number off a console. */
export const parseRpm = (text: string): Parsed<Rpm> => parseNumber(text, RPM)

const WATTS: NumberRules = { of: 'power', min: 0, max: 3000, decimals: 1, suffixes: ['watts', 'watt', 'w'] }
export const parseWatts = (text: string): Parsed<Watts> => parseNumber(text, WATTS)

/** A setting of the bike in its unit, on a whole step inside its range. */
export function parseBikeSetting(text: string, bike: Pick<Bike, 'unit' | 'stepsPerUnit' | 'min' | 'max'>): Parsed<Setting, Refusal> {
  const steps = parseSetting(text, bike)
  if (!steps.ok) return steps
  const setting = steps.value / bike.stepsPerUnit
  const { min = 0, max } = bike
  if (setting < min || setting > max) return refused(words.setup.outOfRange({ min: sayAt(min, bike), max: sayAt(max, bike) }))
  return parsed(setting)
}

/** A setting as it is written: "2½". A setting between two steps, as an older file may hold, in decimals. */
export const sayAt = (setting: Setting, { stepsPerUnit }: Pick<Bike, 'stepsPerUnit'>): string =>
  words.setup.at({ value: setting, stepsPerUnit })

/** "2½ turns", "1 turn" */
export const sayWithUnit = (setting: Setting, { unit, stepsPerUnit }: Pick<Bike, 'stepsPerUnit' | 'unit'>): string =>
  words.setup.withUnit({ value: setting, unit, stepsPerUnit })
