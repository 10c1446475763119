import type { Bike } from '#plan/model.ts'
import { formatSetting } from '#units/formatSetting.ts'
import type { KnobSteps } from '#units/units.ts'

/** A size on the knob, written small with its unit: "¾ turn", "1½ turns", "2 levels". */
export function amountOfKnob(steps: KnobSteps, { unit, stepsPerUnit }: Pick<Bike, 'unit' | 'stepsPerUnit'>): string {
  const plural = steps > stepsPerUnit && /[a-rt-z]$/.test(unit)
  return `${formatSetting(steps, stepsPerUnit)} ${unit}${plural ? 's' : ''}`
}

/** A place on the knob: "¾ turn over base", "base", "2 levels under base". */
export function placeOverBase(steps: KnobSteps, bike: Pick<Bike, 'unit' | 'stepsPerUnit'>): string {
  return steps === 0 ? 'base' : `${amountOfKnob(Math.abs(steps), bike)} ${steps > 0 ? 'over' : 'under'} base`
}
