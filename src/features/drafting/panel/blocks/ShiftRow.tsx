import { useState } from 'react'
import type { Bike } from '#plan/model.ts'
import { Field } from '#ui/Field.tsx'
import { parseSetting } from '#units/parseSetting.ts'
import type { KnobSteps } from '#units/units.ts'

/** Every total of the chosen blocks up or down by the same, typed with or without a sign. */
export function ShiftRow({ bike, onShift }: { bike: Bike; onShift: (steps: KnobSteps) => void }) {
  // Another key after each shift, so that the field is empty for the next one.
  const [shifts, setShifts] = useState(0)
  const commit = (text: string) => {
    if (text.trim() === '') return null
    const steps = parseSetting(text, bike)
    if (!steps.ok) return steps.problem
    onShift(steps.value)
    setShifts(shifts + 1)
    return null
  }
  return <Field key={shifts} label="shift totals" value="" unit={`${bike.unit}s`} placeholder="+¼ or −½" onCommit={commit} />
}
