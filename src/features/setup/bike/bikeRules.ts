import type { Bike } from '#plan/model.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { parseSetting } from '#units/parseSetting.ts'
import type { Setting } from '#units/units.ts'
import type { Refusal } from '#words/said.ts'
import { words } from '#words/words.ts'

type Limit = 'min' | 'base' | 'max'

/**
 * A lowest, base or highest setting: a whole step of the bike, and in order with the other two.
 * Settings are absolute, so none is below 0.
 */
export function parseLimit(text: string, bike: Bike, which: Limit): Parsed<Setting, Refusal> {
  const steps = parseSetting(text, bike)
  if (!steps.ok) return steps
  const setting = steps.value / bike.stepsPerUnit
  const { min = 0, base, max }: Bike = { ...bike, [which]: setting }
  if (setting < 0) return refused(words.setup.belowZero)
  if (setting > 1000) return refused(words.setup.aboveThousand)
  if (min >= max) return refused(words.setup.limitsCrossed({ min, max }))
  if (base < min || base > max) return refused(words.setup.baseOutside({ base, min, max }))
  return parsed(setting)
}

/** Why a bike's settings do not fit another number of steps a unit; null where they do. */
export function stepsProblem(bike: Bike, stepsPerUnit: number): string | null {
  const broken = ([bike.min ?? 0, bike.base, bike.max] as const).find(
    (setting) => Math.abs(setting * stepsPerUnit - Math.round(setting * stepsPerUnit)) > 1e-9,
  )
  return broken === undefined ? null : words.setup.stepsDontFit({ stepsPerUnit, unit: bike.unit, setting: broken })
}
