import type { Bike } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'

/** A size or a place on the knob as texts take it. */
export const knobSize = (steps: KnobSteps, { unit, stepsPerUnit }: Pick<Bike, 'unit' | 'stepsPerUnit'>) => ({ steps, unit, stepsPerUnit })
