import type { CSSProperties } from 'react'
import { maximumOf } from '#engine/response/heartMaximum.ts'
import { useRide } from '#features/setup/parts/useRide.ts'
import type { Bike } from '#plan/model.ts'
import { riderInSentence, riderName } from '#plan/names.ts'
import type { Rider } from '#plan/riderModel.ts'
import { Button } from '#ui/Button.tsx'
import { Field } from '#ui/Field.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { Select } from '#ui/Select.tsx'
import { number } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
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
          <b>{words.riders.name}</b>
          <span>{words.riders.judged}</span>
        </div>
        {riders.map((rider, index) => (
          <div key={rider.id} className="riders-cell" data-reference={index === reference}>
            <Field
              label={words.riders.nameOf({ place: index + 1 })}
              hideLabel
              value={tell(riderName(rider))}
              onCommit={(text) => {
                const name = text.trim()
                if (name === '') return words.riders.needsName
                if (name.length > 60) return words.fields.tooLong({ most: 60, length: name.length })
                return name === rider.name ? null : change(index, { ...rider, name })
              }}
            />
            {index === reference && <span className="setup-mark">{words.riders.judgedFor}</span>}
          </div>
        ))}
      </div>
      {QUANTITIES.map((quantity) => (
        <div key={quantity.key} className="riders-row">
          <div className="riders-about">
            <b>
              {words.riders.numberName({ of: quantity.key })} <span className="setup-quiet">{quantity.unit(bike)}</span>
            </b>
            <span>{words.riders.means({ of: quantity.key })}</span>
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
          <b>{words.riders.basis}</b>
          <span>{words.riders.basisMeans}</span>
        </div>
        {riders.map((rider, index) => (
          <div key={rider.id} className="riders-cell">
            <Select
              label={words.riders.basisOf({ rider: inSentence(rider) })}
              hideLabel
              value={rider.basis ?? 'assumed'}
              choices={bases()}
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
              <Button
                tone="quiet"
                aria-label={words.riders.removeRider({ rider: inSentence(rider) })}
                onClick={() => onChange(riders.toSpliced(index, 1))}
              >
                {words.riders.remove}
              </Button>
            </div>
          ))}
        </div>
      )}
    </div>
  )
}

const bases = () => (['assumed', 'tested'] as const).map((kind) => ({ value: kind, label: words.riders.kindOfBasis({ kind }) }))

const inSentence = (rider: Rider): string => tell(riderInSentence(rider))

interface CellProps {
  quantity: Quantity
  rider: Rider
  bike: Bike
  /** Takes the rider, or says why not. */
  onChange: (rider: Rider) => string | null
}

function Cell({ quantity, rider, bike, onChange }: CellProps) {
  const { key, format, parse } = quantity
  const value = rider[key]
  const text = (held: number | undefined) => (held === undefined ? '' : format(held, bike))
  return (
    <NumberField<number | undefined>
      label={words.riders.numberOf({ of: key, rider: inSentence(rider) })}
      hideLabel
      value={value}
      placeholder={key === 'maxHr' ? number(maximumOf(rider), 0) : undefined}
      hint={key === 'maxHr' && value === undefined ? words.riders.fromAge : undefined}
      format={text}
      parse={(typed) => (isOptional(key) && typed.trim() === '' ? { ok: true, value: undefined } : parse(typed, bike))}
      onCommit={(next) => {
        if (next === value || text(next) === text(value)) return null
        return onChange(withNumber(rider, key, next))
      }}
    />
  )
}
