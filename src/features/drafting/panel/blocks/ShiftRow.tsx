import type { Bike } from '#plan/model.ts'
import { Field } from '#ui/Field.tsx'
import { parseSetting } from '#units/parseSetting.ts'
import type { KnobSteps } from '#units/units.ts'
import { words } from '#words/words.ts'

/** The resistance of every chosen block up or down by the same, typed with or without a sign. */
export function ShiftRow({ bike, onShift }: { bike: Bike; onShift: (steps: KnobSteps) => void }) {
  const commit = (text: string) => {
    if (text.trim() === '') return null
    const steps = parseSetting(text, bike)
    if (!steps.ok) return steps.problem
    onShift(steps.value)
    return null
  }
  return (
    <Field
      className="panel-edit-only"
      label={words.panels.shiftResistance}
      value=""
      unit={words.measures.unitOf(bike.unit, true)}
      placeholder={words.panels.shiftExample}
      onCommit={commit}
    />
  )
}
