import type { CSSProperties } from 'react'
import { maximumOf } from '#engine/response/heartMaximum.ts'
import { useRide } from '#features/setup/parts/useRide.ts'
import type { Bike } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import { Button } from '#ui/Button.tsx'
import { Field } from '#ui/Field.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { type Choice, Select } from '#ui/Select.tsx'
import { formatNumber } from '#units/formatNumber.ts'
import { isOptional, QUANTITIES, type Quantity } from './quantities.ts'
import { riderProblem } from './riderNotes.ts'
import { withBasis, withNumber } from './withNumber.ts'
import './riders.css'

interface Props {
  riders: readonly Rider[]
  reference: number
  onChange: (riders: readonly Rider[]) => void
}

/** Riders side by side: a row for every number, with what it means. */
export function RiderGrid({ riders, reference, onChange }: Props) {
  const bike = useRide((ride) => ride.bike)
  const change = (index: number, next: Rider) => {
    const problem = riderProblem(next)
    if (problem === null) onChange(riders.with(index, next))
    return problem
  }
  return (
    <div className="riders-grid" style={{ '--riders': riders.length } as CSSProperties}>
      <div className="riders-row">
        <div className="riders-about">
          <b>name</b>
          <span>The mark is on the one the ride is judged for.</span>
        </div>
        {riders.map((rider, index) => (
          <div key={rider.id} className="riders-cell" data-reference={index === reference}>
            <Field
              label={`name of rider ${index + 1}`}
              hideLabel
              value={rider.name}
              onCommit={(text) => {
                const name = text.trim()
                if (name === '') return 'A rider needs a name.'
                if (name.length > 60) return `At most 60 characters; this has ${name.length}.`
                return name === rider.name ? null : change(index, { ...rider, name })
              }}
            />
            {index === reference && <span className="setup-mark">judged for</span>}
          </div>
        ))}
      </div>
      {QUANTITIES.map((quantity) => (
        <div key={quantity.key} className="riders-row">
          <div className="riders-about">
            <b>
              {quantity.label} <span className="setup-quiet">{quantity.unit(bike)}</span>
            </b>
            <span>{quantity.means}</span>
          </div>
          {riders.map((rider, index) => (
            <div key={rider.id} className="riders-cell">
              <Cell quantity={quantity} rider={rider} bike={bike} onChange={(next) => change(index, next)} />
            </div>
          ))}
        </div>
      ))}
      <div className="riders-row">
        <div className="riders-about">
          <b>critical power and reserve are</b>
          <span>Tested ones make narrower estimates. A number you type over counts as assumed until you say otherwise.</span>
        </div>
        {riders.map((rider, index) => (
          <div key={rider.id} className="riders-cell">
            <Select
              label={`where critical power and reserve of the ${rider.name} come from`}
              hideLabel
              value={rider.basis ?? 'assumed'}
              choices={BASES}
              onChange={(basis) => onChange(riders.with(index, withBasis(rider, basis)))}
            />
          </div>
        ))}
      </div>
      {riders.length > 1 && (
        <div className="riders-row riders-remove">
          <div className="riders-about" />
          {riders.map((rider, index) => (
            <div key={rider.id} className="riders-cell">
              <Button tone="quiet" aria-label={`remove the ${rider.name}`} onClick={() => onChange(riders.toSpliced(index, 1))}>
                remove
              </Button>
            </div>
          ))}
        </div>
      )}
    </div>
  )
}

const BASES: readonly Choice<NonNullable<Rider['basis']>>[] = [
  { value: 'assumed', label: 'assumed' },
  { value: 'tested', label: 'tested' },
]

interface CellProps {
  quantity: Quantity
  rider: Rider
  bike: Bike
  /** Takes the rider, or says why not. */
  onChange: (rider: Rider) => string | null
}

function Cell({ quantity, rider, bike, onChange }: CellProps) {
  const { key, label, format, parse } = quantity
  const value = rider[key]
  const text = (held: number | undefined) => (held === undefined ? '' : format(held, bike))
  return (
    <NumberField<number | undefined>
      label={`${label} of the ${rider.name}`}
      hideLabel
      value={value}
      placeholder={key === 'maxHr' ? formatNumber(maximumOf(rider), 0) : undefined}
      hint={key === 'maxHr' && value === undefined ? 'from age' : undefined}
      format={text}
      parse={(typed) => (isOptional(key) && typed.trim() === '' ? { ok: true, value: undefined } : parse(typed, bike))}
      onCommit={(next) => {
        if (next === value || text(next) === text(value)) return null
        return onChange(withNumber(rider, key, next))
      }}
    />
  )
}
