import { atCadence } from '#engine/demand/calibrateByWatts.ts'
import type { Bike } from '#plan/model.ts'
import { Field } from '#ui/Field.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { type Choice, Select } from '#ui/Select.tsx'
import { refused } from '#units/parsed.ts'
import type { Setting } from '#units/units.ts'
import { parseLimit, stepsProblem } from './bikeRules.ts'
import { parseRpm, parseStepsPerUnit, sayAt } from './fields.ts'
import { sayCadence, sayExponent } from './sayBrake.ts'

interface Props {
  bike: Bike
  onChange: (bike: Bike) => void
}

type Brake = Bike['brake'] | 'fitted'

const BRAKES: readonly Choice<Brake>[] = [
  { value: 'friction', label: 'friction' },
  { value: 'magnetic', label: 'magnetic' },
]

/** The two kinds, and what the bike was fitted with while it has that. */
const brakesOf = ({ brakeFit }: Bike): readonly Choice<Brake>[] =>
  brakeFit ? [...BRAKES, { value: 'fitted', label: 'as fitted' }] : BRAKES

/** The resistance scale: its name, unit and steps, its ends and base, and its brake. */
export function BikeForm({ bike, onChange }: Props) {
  const text = (key: 'name' | 'unit', longest: number, required: string) => (typed: string) => {
    const value = typed.trim()
    if (value === '') return required
    if (value.length > longest) return `At most ${longest} characters; this has ${value.length}.`
    if (value !== bike[key]) onChange({ ...bike, [key]: value })
    return null
  }
  const chooseBrake = (brake: Brake) => {
    if (brake === 'fitted') return
    const { brakeFit: _before, ...others } = bike
    onChange({ ...others, brake })
  }
  const limit = (label: string, which: 'min' | 'base' | 'max', hint: string) => (
    <NumberField<Setting>
      key={`${which} ${bike.id}`}
      label={label}
      value={bike[which] ?? 0}
      unit={`${bike.unit}s`}
      hint={hint}
      format={(setting) => sayAt(setting, bike)}
      parse={(typed) => parseLimit(typed, bike, which)}
      onCommit={(setting) => {
        if (setting !== (bike[which] ?? 0)) onChange({ ...bike, [which]: setting })
        return null
      }}
      step={(setting, direction, large) => stepped(setting, direction * (large ? 1 : 1 / bike.stepsPerUnit), bike, which)}
    />
  )
  return (
    <section className="setup-part" aria-label="the bike of this ride">
      <h2>the bike of this ride</h2>
      <div className="setup-form">
        <Field
          key={`name ${bike.id}`}
          label="name"
          className="setup-wide"
          value={bike.name}
          onCommit={text('name', 120, 'A bike needs a name.')}
        />
        <Field
          key={`unit ${bike.id}`}
          label="unit"
          value={bike.unit}
          hint="One of it: turn, level, gear."
          onCommit={text('unit', 20, 'A scale needs a unit, such as turn or level.')}
        />
        <NumberField
          key={`steps ${bike.id}`}
          label="steps"
          value={bike.stepsPerUnit}
          unit={`a ${bike.unit}`}
          hint="4 for quarters, 1 for whole ones."
          format={String}
          parse={(typed) => {
            const steps = parseStepsPerUnit(typed)
            const problem = steps.ok ? stepsProblem(bike, steps.value) : null
            return problem === null ? steps : refused(problem)
          }}
          onCommit={(stepsPerUnit) => {
            if (stepsPerUnit !== bike.stepsPerUnit) onChange({ ...bike, stepsPerUnit })
            return null
          }}
        />
        {limit('lowest', 'min', 'Wheel running free.')}
        {limit('base', 'base', 'Where the pedals are just in control.')}
        {limit('highest', 'max', 'The end of the knob.')}
        <div>
          <Select<Brake> label="brake" value={bike.brakeFit ? 'fitted' : bike.brake} choices={brakesOf(bike)} onChange={chooseBrake} />
          <p className="ui-field-under">{sayCadence(bike)}</p>
          {bike.brakeFit && (
            <p className="ui-field-under">
              Watts grow with cadence to the {sayExponent(bike.brakeFit)}; friction is 1, magnetic 2. Choosing either drops the fit.
            </p>
          )}
        </div>
        <NumberField
          key={`rpm ${bike.id}`}
          label="watts are at"
          value={bike.referenceRpm}
          unit="rev/min"
          hint="The cadence the table below was ridden at."
          format={(rpm) => String(rpm)}
          parse={parseRpm}
          onCommit={(referenceRpm) => {
            if (referenceRpm !== bike.referenceRpm) onChange(atCadence(bike, referenceRpm))
            return null
          }}
        />
      </div>
    </section>
  )
}

/** The setting a step on, where that keeps the three limits in order; else as it was. */
function stepped(setting: Setting, by: Setting, bike: Bike, which: 'min' | 'base' | 'max'): Setting {
  const next = setting + by
  return parseLimit(String(next), bike, which).ok ? next : setting
}
