import { atCadence } from '#engine/demand/calibrateByWatts.ts'
import type { Bike } from '#plan/model.ts'
import { bikeName } from '#plan/names.ts'
import { Field } from '#ui/Field.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { Select } from '#ui/Select.tsx'
import { refused } from '#units/parsed.ts'
import type { Setting } from '#units/units.ts'
import { tell, words } from '#words/words.ts'
import { parseLimit, stepsProblem } from './bikeRules.ts'
import { parseRpm, parseStepsPerUnit, sayAt } from './fields.ts'
import { sayCadence } from './sayBrake.ts'

interface Props {
  bike: Bike
  onChange: (bike: Bike) => void
}

type Brake = Bike['brake'] | 'fitted'

/** The two kinds, and what the bike was fitted with while it has that. */
function brakesOf({ brakeFit }: Bike) {
  const brakes: readonly Brake[] = brakeFit ? ['friction', 'magnetic', 'fitted'] : ['friction', 'magnetic']
  return brakes.map((brake) => ({ value: brake, label: words.setup.brakeName({ brake }) }))
}

/** The resistance scale: its name, unit and steps, its ends and base, and its brake. */
export function BikeForm({ bike, onChange }: Props) {
  const text = (key: 'name' | 'unit', longest: number, required: string) => (typed: string) => {
    const value = typed.trim()
    if (value === '') return required
    if (value.length > longest) return words.fields.tooLong({ most: longest, length: value.length })
    if (value !== bike[key]) onChange({ ...bike, [key]: value })
    return null
  }
  const chooseBrake = (brake: Brake) => {
    if (brake === 'fitted') return
    const { brakeFit: _before, ...others } = bike
    onChange({ ...others, brake })
  }
  const limit = (which: 'min' | 'base' | 'max') => (
    <NumberField<Setting>
      key={`${which} ${bike.id}`}
      label={words.setup.limit({ which })}
      value={bike[which] ?? 0}
      unit={words.setup.units(bike)}
      hint={words.setup.limitHint({ which })}
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
    <section className="setup-part" aria-label={words.setup.bikeHeading}>
      <h2>{words.setup.bikeHeading}</h2>
      <div className="setup-form">
        <Field
          key={`name ${bike.id}`}
          label={words.setup.name}
          className="setup-wide"
          value={tell(bikeName(bike))}
          onCommit={text('name', 120, words.setup.needsName)}
        />
        <Field
          key={`unit ${bike.id}`}
          label={words.setup.unit}
          value={bike.unit}
          hint={words.setup.unitHint}
          onCommit={text('unit', 20, words.setup.needsUnit)}
        />
        <NumberField
          key={`steps ${bike.id}`}
          label={words.setup.steps}
          value={bike.stepsPerUnit}
          unit={words.setup.perUnit(bike)}
          hint={words.setup.stepsHint}
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
        {limit('min')}
        {limit('base')}
        {limit('max')}
        <div>
          <Select<Brake>
            label={words.setup.brake}
            value={bike.brakeFit ? 'fitted' : bike.brake}
            choices={brakesOf(bike)}
            onChange={chooseBrake}
          />
          <p className="ui-field-under">{sayCadence(bike)}</p>
          {bike.brakeFit && <p className="ui-field-under">{words.setup.fittedExponent(bike.brakeFit)}</p>}
        </div>
        <NumberField
          key={`rpm ${bike.id}`}
          label={words.setup.measuredAt}
          value={bike.referenceRpm}
          unit={words.riders.rpm}
          hint={words.setup.measuredHint}
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
