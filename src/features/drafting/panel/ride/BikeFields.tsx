import { memo } from 'react'
import { parseLimit, stepsProblem } from '#features/drafting/panel/ride/bikeRules.ts'
import { parseStepsPerUnit } from '#features/drafting/panel/ride/rules.ts'
import { Fold } from '#features/drafting/panel/rows/Fold.tsx'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import type { Bike, Ride } from '#plan/model.ts'
import type { Choice } from '#ui/Select.tsx'
import { formatSetting } from '#units/formatSetting.ts'
import { refused } from '#units/parsed.ts'
import type { Setting } from '#units/units.ts'

export interface BikeFieldsProps {
  bike: Bike
  datum: Ride['datum']
  onBike: (bike: Bike) => void
  onDatum: (datum: Ride['datum']) => void
}

const BRAKES: readonly Choice<Bike['brake']>[] = [
  { value: 'friction', label: 'friction' },
  { value: 'magnetic', label: 'magnetic' },
]

const DATUMS: readonly Choice<Ride['datum']>[] = [
  { value: 'base', label: 'each rider’s base' },
  { value: 'loose', label: 'the loose wheel' },
]

/** The resistance scale the ride is written for. */
export const BikeFields = memo(function BikeFields({ bike, datum, onBike, onDatum }: BikeFieldsProps) {
  const limitRow = (label: string, which: 'min' | 'base' | 'max') => (
    <QuantityRow<Setting>
      label={label}
      value={bike[which] ?? 0}
      unit={`${bike.unit}s`}
      format={(setting) => formatSetting(Math.round(setting * bike.stepsPerUnit), bike.stepsPerUnit)}
      parse={(text) => parseLimit(text, bike, which)}
      onChange={(setting) => onBike({ ...bike, [which]: setting })}
      step={(setting, direction, large) => stepLimit(setting, direction * (large ? 1 : 1 / bike.stepsPerUnit), bike, which)}
    />
  )
  return (
    <section className="panel-group" aria-label="bike">
      <h3>bike</h3>
      <div className="panel-rows">
        <TextRow
          label="name"
          value={bike.name}
          required="A bike needs a name."
          longest={120}
          onChange={(name) => name !== undefined && onBike({ ...bike, name })}
        />
        <SelectRow label="count from" value={datum} choices={DATUMS} onChange={onDatum} />
        {limitRow('base', 'base')}
      </div>
      <Fold title="scale and brake" holds={sayScale(bike)} closed>
        <TextRow
          label="unit"
          value={bike.unit}
          required="A scale needs a unit, such as turn or level."
          hint="One of it: turn, level, gear."
          longest={20}
          onChange={(unit) => unit !== undefined && onBike({ ...bike, unit })}
        />
        <QuantityRow
          label="steps"
          value={bike.stepsPerUnit}
          unit={`a ${bike.unit}`}
          format={String}
          parse={(text) => {
            const steps = parseStepsPerUnit(text)
            const problem = steps.ok ? stepsProblem(bike, steps.value) : null
            return problem === null ? steps : refused(problem)
          }}
          onChange={(stepsPerUnit) => onBike({ ...bike, stepsPerUnit })}
        />
        {limitRow('lowest', 'min')}
        {limitRow('highest', 'max')}
        <SelectRow label="brake" value={bike.brake} choices={BRAKES} onChange={(brake) => onBike({ ...bike, brake })} />
      </Fold>
    </section>
  )
})

const sayScale = ({ unit, stepsPerUnit, min = 0, max, brake }: Bike) =>
  `${stepsPerUnit === 1 ? `${unit}s` : `${formatSetting(1, stepsPerUnit)} ${unit}`}, ${min} to ${max}, ${brake}`

/** The setting a step on, where that keeps the three limits in order; else as it was. */
function stepLimit(setting: Setting, by: Setting, bike: Bike, which: 'min' | 'base' | 'max'): Setting {
  const next = setting + by
  return parseLimit(String(next), bike, which).ok ? next : setting
}
