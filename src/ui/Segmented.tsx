import { type ReactNode, useId } from 'react'
import type { Choice } from './Select.tsx'
import './Segmented.css'

interface SegmentedProps<V extends string> {
  label: string
  value: V
  choices: readonly (Choice<V> & { figure?: ReactNode })[]
  onChange: (value: V) => void
  hideLabel?: boolean
  className?: string
}

/** A few values side by side, one of them chosen: native radio buttons, so arrows and screen readers work as they should. */
export function Segmented<V extends string>({ label, value, choices, onChange, hideLabel, className }: SegmentedProps<V>) {
  const name = useId()
  return (
    <fieldset className={`ui-segmented ${className ?? ''}`}>
      <legend className={hideLabel ? 'ui-hidden' : 'ui-segmented-label'}>{label}</legend>
      <div className="ui-segmented-row">
        {choices.map((choice) => (
          <label key={choice.value} className="ui-segmented-cell" title={choice.figure ? choice.label : undefined}>
            <input
              type="radio"
              className="ui-hidden"
              name={name}
              value={choice.value}
              checked={choice.value === value}
              disabled={choice.disabled}
              onChange={() => onChange(choice.value)}
            />
            {choice.figure}
            <span>{choice.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
